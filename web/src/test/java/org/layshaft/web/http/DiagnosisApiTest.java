package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.web.cli.Layshaft;
import org.layshaft.web.json.SchemaFiles;

/** The table of faults, and suspects, over HTTP. */
class DiagnosisApiTest {
    private static final String GROWL = "/api/suspects?layout=curlew&seen=neutral-pedal-up:+growls&seen=4:+not+noise";

    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @ParameterizedTest
    @CsvSource({
        "/api/faults?layout=curlew",
        "/api/faults?layout=curlew&fault=3-4-fork+bent",
        "/api/faults?layout=heron&fault=oil+low&fault=clutch+dragging",
        "/api/faults?layout=plover&fault=left-half-shaft+broken"
    })
    void tablesKeepToTheirSchema(String path) {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(
                List.of(), schema(SchemaFiles.of("faults").orElseThrow()).validate(reply.body(), InputFormat.JSON));
    }

    @ParameterizedTest
    @CsvSource({
        GROWL,
        "/api/suspects?layout=curlew",
        "/api/suspects?layout=curlew&seen=growls+pulling+in+3rd&seen=after-work",
        "/api/suspects?layout=plover&seen=leaks",
        "/api/suspects?layout=curlew&seen=jumps-out&seen=leaks&seen=cold+shifting-into+2:+grinds-going-in"
    })
    void suspectsKeepToTheirSchema(String path) {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(
                List.of(), schema(SchemaFiles.of("suspects").orElseThrow()).validate(reply.body(), InputFormat.JSON));
    }

    @Test
    void theSchemasWouldNoticeAndAreServed() {
        assertFalse(schema(SchemaFiles.of("faults").orElseThrow())
                .validate("{}", InputFormat.JSON)
                .isEmpty());
        assertFalse(schema(SchemaFiles.of("suspects").orElseThrow())
                .validate(served.get(GROWL).body().replaceFirst("\"rank\"", "\"place\""), InputFormat.JSON)
                .isEmpty());
        assertEquals(
                SchemaFiles.of("faults").orElseThrow(),
                served.get("/api/faults.schema.json").body());
        assertEquals(
                SchemaFiles.of("suspects").orElseThrow(),
                served.get("/api/suspects.schema.json").body());
    }

    @Test
    void theCommandLineGivesTheSame() {
        assertEquals(
                served.get(GROWL).body(),
                ran("suspects", "curlew", "neutral-pedal-up: growls", "4: not noise", "--json"));
        assertEquals(
                served.get("/api/faults?layout=curlew&fault=3-4-fork+bent").body(),
                ran("faults", "curlew", "3-4-fork bent", "--json"));
    }

    @Test
    void allThatIsWrongIsToldAtOnce() {
        HttpResponse<String> reply =
                served.get("/api/suspects?layout=curlew&seen=pulling+9:+growls&seen=pulling+3:+growks");

        assertEquals(422, reply.statusCode());
        assertEquals(Reply.PROBLEM, reply.headers().firstValue("Content-Type").orElseThrow());
        assertTrue(reply.body().contains("no gear '9'"), reply::body);
        assertTrue(reply.body().contains("growks"), reply::body);
        assertEquals(400, served.get("/api/suspects").statusCode());
        assertEquals(404, served.get("/api/faults?layout=curlw").statusCode());
        assertEquals(
                404, served.get("/api/faults?layout=curlew&fault=spoon+bent").statusCode());
    }

    private static String ran(String... command) {
        StringWriter out = new StringWriter();
        assertEquals(0, Layshaft.run(new PrintWriter(out), new PrintWriter(new StringWriter()), command));
        return out.toString();
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
    }
}
