package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

/** The parts counter over HTTP. */
class PartsApiTest {
    private static final String THIRD_IN_EARLY = "/api/fit?set=SM-1152&box=curlew-early&place=third";

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
        THIRD_IN_EARLY,
        "/api/fit?set=sm-1150&box=curlew&serial=5000&place=third",
        "/api/fit?set=SM-4350&box=woodcock",
        "/api/fit?set=SM-4051",
        "/api/fit?box=curlew-late&place=fourth-ring"
    })
    void servingsKeepToTheirSchema(String path) {
        assertKeeps(SchemaFiles.of("fit").orElseThrow(), path);
    }

    @Test
    void listsAndTablesKeepToTheirs() {
        assertKeeps(SchemaFiles.of("parts").orElseThrow(), "/api/parts");
        assertKeeps(SchemaFiles.of("parts").orElseThrow(), "/api/parts?find=third+pair");
        assertKeeps(SchemaFiles.of("cross").orElseThrow(), "/api/cross");
        assertKeeps(SchemaFiles.of("cross").orElseThrow(), "/api/cross?box=curlew&shape=pair&verdict=fits");
    }

    @Test
    void theSchemasWouldNoticeAndAreServed() {
        assertFalse(schema(SchemaFiles.of("fit").orElseThrow())
                .validate(served.get(THIRD_IN_EARLY).body().replace("\"fails\"", "\"flops\""), InputFormat.JSON)
                .isEmpty());
        assertEquals(
                SchemaFiles.of("fit").orElseThrow(),
                served.get("/api/fit.schema.json").body());
        assertEquals(
                SchemaFiles.of("parts").orElseThrow(),
                served.get("/api/parts.schema.json").body());
        assertEquals(
                SchemaFiles.of("cross").orElseThrow(),
                served.get("/api/cross.schema.json").body());
    }

    /** Clutching teeth: 39 of the later third gear, 36 of the earlier sleeve. */
    @Test
    void whatFailsIsToldWithBothNumbersAndWhatCuresIt() throws JsonProcessingException {
        JsonNode best =
                new ObjectMapper().readTree(served.get(THIRD_IN_EARLY).body()).at("/servings/0");
        JsonNode failing = best.at("/checks").findParents("check").stream()
                .filter(check -> check.get("check").asText().equals("clutching-count"))
                .filter(check -> check.get("outcome").asText().equals("fails"))
                .findFirst()
                .orElseThrow();

        assertEquals("fits-with", best.at("/verdict").asText());
        assertEquals(39, failing.at("/figures/0/value").asInt());
        assertEquals(36, failing.at("/figures/1/value").asInt());
        assertEquals(3, failing.at("/missedBy/value").asInt());
        assertEquals(
                List.of("SM-1171", "SM-1153"), best.at("/companions/0/units").findValuesAsText("number"));
    }

    @Test
    void theCommandLineGivesTheSame() {
        assertEquals(
                served.get(THIRD_IN_EARLY).body(),
                ran("fit", "SM-1152", "--box", "curlew-early", "--place", "third", "--json"));
        assertEquals(
                served.get("/api/cross?box=curlew&shape=train").body(),
                ran("cross", "--box", "curlew", "--shape", "train", "--json"));
        assertEquals(served.get("/cross.csv?shape=train").body(), ran("cross", "--shape", "train", "--csv"));
    }

    @Test
    void theTableAsCsv() {
        HttpResponse<String> reply = served.get("/cross.csv?shape=train&box=curlew-early");
        List<String> lines = List.of(reply.body().split("\r\n"));

        assertEquals(
                "text/csv;charset=utf-8",
                reply.headers().firstValue("Content-Type").orElseThrow());
        assertEquals("set,name,shape,build,layout,box,verdict,places tried,at", lines.get(0));
        assertTrue(
                lines.stream()
                        .anyMatch(line ->
                                line.startsWith("SM-1160,\"Curlew reverse gears, earlier\",train,curlew-early,")),
                reply::body);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            400 | /api/fit                                          | Neither a set nor a box
            404 | /api/fit?set=SM-115                               | SM-1150
            404 | /api/fit?set=SM-1152&box=curlw                    | curlew
            422 | /api/fit?set=SM-1152&box=dotterel                 | What stands in a Dotterel is not known
            404 | /api/fit?set=SM-1152&box=curlew&place=thrd        | third
            400 | /api/fit?set=SM-1152&box=curlew&serial=early      | "early"
            422 | /api/fit?set=SM-1152&box=curlew&serial=-5         | The serial number is -5
            400 | /api/fit?set=SM-1152&serial=12                    | Give the box too
            404 | /api/cross?verdict=perhaps                        | fits-with
            404 | /api/cross?shape=heap                             | synchroniser
            404 | /cross.csv?box=gannet                             | gannet
            """)
    void whatCannotBeUsedIsSaid(int status, String path, String said) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode(), reply::body);
        String body = reply.body().replace("\\\"", "\"").replace("&quot;", "\"");
        assertTrue(body.contains(said), body);
    }

    @Test
    void allProblemsAreSaidAtOnce() {
        String body = served.get("/api/fit?set=SM-9&box=curlw&serial=x").body();

        assertTrue(body.contains("SM-9"), body);
        assertTrue(body.contains("curlw"), body);
        assertTrue(body.contains("serial number"), body);
    }

    private static void assertKeeps(String schema, String path) {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(List.of(), schema(schema).validate(reply.body(), InputFormat.JSON));
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
