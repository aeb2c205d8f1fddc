package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.layshaft.web.Demo;
import org.layshaft.web.cli.Layshaft;
import org.layshaft.web.json.SchemaFiles;

class ApiTest {
    private static final String HEADLINE = "which gears still work if the 3-4 fork is bent";

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
    void gearsOffTheBentForksSleeveWorkAndThoseOnItAreInDoubt() throws JsonProcessingException {
        JsonNode answer = json("/api/gears?layout=curlew&fault=3-4-fork+bent");

        assertEquals(
                List.of("1 works", "2 works", "3 uncertain", "4 uncertain", "5 works", "R works"), verdicts(answer));
        assertEquals("gears-left", answer.get("question").asText());
        assertEquals("3-4-fork bent", answer.at("/faults/0/written").asText());
        assertEquals("799/444", answer.at("/gears/2/ratio/exact").asText());
        assertEquals(1.79955, answer.at("/gears/2/ratio/value").asDouble());
        assertFalse(answer.get("cautions").isEmpty());
    }

    @Test
    void aQuestionInWordsComesToTheSame() throws JsonProcessingException {
        JsonNode asked = json("/api/ask?layout=curlew&q=" + Served.encoded(HEADLINE));
        JsonNode given = json("/api/gears?layout=curlew&fault=3-4-fork+bent");

        assertEquals(given.get("gears"), asked.get("gears"));
        assertEquals(given.get("faults"), asked.get("faults"));
        assertTrue(asked.get("understood").asText().contains("3-4 fork"), asked.get("understood")::asText);
    }

    @Test
    void aFaultGivenBesidesTheQuestionIsSupposedToo() throws JsonProcessingException {
        JsonNode answer = json("/api/ask?layout=curlew&fault=interlock+missing&q=" + Served.encoded(HEADLINE));

        assertEquals(List.of("3-4-fork bent", "interlock missing"), written(answer));
        assertTrue(answer.get("conflicts").findValues("canMeet").stream().allMatch(JsonNode::asBoolean));
    }

    @Test
    void severalFaultsAreSupposedAtOnce() throws JsonProcessingException {
        JsonNode answer = json("/api/gears?layout=curlew&fault=3-4-fork+bent+side%3Dfront&fault=first+stripped");

        assertEquals(List.of("3-4-fork bent side=front", "first stripped"), written(answer));
        assertEquals("lost", answer.at("/gears/0/verdict").asText());
    }

    @Test
    void theCommandLineGivesTheSame() throws JsonProcessingException {
        StringWriter out = new StringWriter();
        int status = Layshaft.run(
                new PrintWriter(out),
                new PrintWriter(new StringWriter()),
                "ask",
                "--layout",
                "curlew",
                "--json",
                HEADLINE);

        assertEquals(0, status);
        assertEquals(
                out.toString(),
                served.get("/api/ask?layout=curlew&q=" + Served.encoded(HEADLINE))
                        .body());
    }

    @Test
    void layoutsAreListedAndShown() throws JsonProcessingException {
        assertEquals(
                Demo.desk().knowledge().layouts().keySet().stream().sorted().toList(),
                json("/api/layouts").get("layouts").findValuesAsText("id").stream()
                        .sorted()
                        .toList());
        JsonNode curlew = json("/api/layouts/curlew");
        assertEquals(1.8, curlew.at("/gears/2/printed").asDouble());
        assertEquals("3-4-sleeve", curlew.at("/gears/2/member").asText());
        assertTrue(curlew.get("parts").findValuesAsText("id").contains("interlock-pin"));
    }

    @Test
    void wordsNameFailuresAndParts() throws JsonProcessingException {
        JsonNode words = json("/api/words");

        assertTrue(words.get("failureModes").findValuesAsText("id").contains("fork/bent"));
        assertTrue(words.at("/parts/plover").findValuesAsText("id").contains("left-half-shaft"));
    }

    @Test
    void theSchemaIsServed() {
        HttpResponse<String> reply = served.get("/api/answer.schema.json");

        assertEquals(
                "application/schema+json",
                reply.headers().firstValue("Content-Type").orElseThrow());
        assertEquals(SchemaFiles.of("answer").orElseThrow(), reply.body());
    }

    private static JsonNode json(String path) throws JsonProcessingException {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(
                "application/json", reply.headers().firstValue("Content-Type").orElseThrow());
        return new ObjectMapper().readTree(reply.body());
    }

    private static List<String> verdicts(JsonNode answer) {
        List<String> verdicts = new ArrayList<>();
        answer.get("gears")
                .forEach(gear -> verdicts.add(
                        gear.get("gear").asText() + " " + gear.get("verdict").asText()));
        return verdicts;
    }

    private static List<String> written(JsonNode answer) {
        return answer.get("faults").findValuesAsText("written");
    }
}
