package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.web.cli.Layshaft;
import org.layshaft.web.json.SchemaFiles;

class SoundApiTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void theCommandLineGivesTheSame() {
        StringWriter out = new StringWriter();
        String[] command = {"sound", "curlew", "--gear", "3", "--rpm", "2400", "--hz", "756", "--within", "2%", "--json"
        };
        assertEquals(0, Layshaft.run(new PrintWriter(out), new PrintWriter(new StringWriter()), command));

        HttpResponse<String> reply = served.get("/api/sound?layout=curlew&gear=3&rpm=2400&hz=756&within=2%25");
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(out.toString(), reply.body());
    }

    @Test
    void theSchemaIsServed() {
        HttpResponse<String> reply = served.get("/api/sound.schema.json");

        assertEquals(
                "application/schema+json",
                reply.headers().firstValue("Content-Type").orElseThrow());
        assertEquals(SchemaFiles.of("sound").orElseThrow(), reply.body());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            400 | /api/sound                                        | The layout is missing
            404 | /api/sound?layout=curlw&gear=3                    | curlw
            400 | /api/sound?layout=curlew                          | The gear is missing
            404 | /api/sound?layout=curlew&gear=9                   | no gear "9"
            400 | /api/sound?layout=curlew&gear=3&hz=800            | without a speed
            422 | /api/sound?layout=curlew&gear=3&rpm=-1            | The rpm is -1
            422 | /api/sound?layout=curlew&gear=3&rpm=9&sidebands=77 | 77 sidebands
            """)
    void whatCannotBeUsedIsSaid(int status, String path, String said) throws JsonProcessingException {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode(), reply::body);
        JsonNode problem = new ObjectMapper().readTree(reply.body());
        assertTrue(problem.get("detail").asText().contains(said), problem.get("detail")::asText);
    }
}
