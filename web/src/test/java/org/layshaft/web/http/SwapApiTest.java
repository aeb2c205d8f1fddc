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

/** Changes, and the bench, over HTTP. */
class SwapApiTest {
    private static final String THIRD = "/api/swap?box=curlew-early&set=SM-1154&place=third&cruise=100";

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
        THIRD,
        "/api/swap?box=curlew",
        "/api/swap?box=curlew&tyre=205/55+R16&cruise=100&shift=3500&torque=150",
        "/api/swap?box=dotterel&tyre=205/55+R16",
        "/api/swap?box=heron&torque=200",
        "/api/swap?box=curlew&axle=3.7&drive=8/17+8/18"
    })
    void changesKeepToTheirSchema(String path) {
        assertKeeps(SchemaFiles.of("swap").orElseThrow(), path);
    }

    @ParameterizedTest
    @CsvSource({
        "/api/identify?teeth=34&tip=96.9&helix=22&span=5+34.9",
        "/api/identify?tip=50",
        "/api/identify?form=internal&teeth=60&tip=145&helix=0",
        "/api/identify?spline=W+30+x+2+x+14+x+8f",
        "/api/identify?spline=W+30+x+2+x+14+x+8f&hub=N+30+x+1.25+x+22+x+9H"
    })
    void whatLiesOnTheBenchKeepsToItsSchema(String path) {
        assertKeeps(SchemaFiles.of("identify").orElseThrow(), path);
    }

    @Test
    void theSchemasWouldNoticeAndAreServed() {
        assertFalse(schema(SchemaFiles.of("swap").orElseThrow())
                .validate(served.get(THIRD).body().replace("\"ratios\"", "\"rations\""), InputFormat.JSON)
                .isEmpty());
        assertEquals(
                SchemaFiles.of("swap").orElseThrow(),
                served.get("/api/swap.schema.json").body());
        assertEquals(
                SchemaFiles.of("identify").orElseThrow(),
                served.get("/api/identify.schema.json").body());
    }

    /** 47/24 × 32/38 in place of 47/24 × 34/37. */
    @Test
    void anExchangedPairGivesItsRatioExactly() throws JsonProcessingException {
        JsonNode third = new ObjectMapper()
                .readTree(served.get(THIRD).body()).at("/ratios").findParents("gear").stream()
                        .filter(ratio -> ratio.get("gear").asText().equals("3"))
                        .findFirst()
                        .orElseThrow();

        assertEquals("799/444", third.at("/before/exact").asText());
        assertEquals("94/57", third.at("/after/exact").asText());
    }

    /** 195/65 R15 rolls 1935 mm, 205/55 R16 1928 mm, by 0.305 times each diameter. */
    @Test
    void otherTyresPutTheSpeedometerOut() throws JsonProcessingException {
        JsonNode swap = new ObjectMapper()
                .readTree(served.get("/api/swap?box=curlew&wasTyre=195/65+R15&tyre=205/55+R16")
                        .body());

        assertTrue(swap.at("/speedometerPercent/value").asDouble() > 0.2, swap::toPrettyString);
        assertTrue(swap.at("/speedometerPercent/value").asDouble() < 0.6, swap::toPrettyString);
        assertTrue(swap.at("/namesHold").asBoolean());
    }

    @Test
    void theCommandLineGivesTheSame() {
        assertEquals(
                served.get(THIRD).body(),
                ran("swap", "curlew-early", "--set", "SM-1154", "--place", "third", "--cruise", "100", "--json"));
        assertEquals(
                served.get("/api/identify?spline=W+30+x+2+x+14+x+8f").body(),
                ran("identify", "--spline", "W 30 x 2 x 14 x 8f", "--json"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            400 | /api/swap                                   | The box is missing
            404 | /api/swap?box=curlw                         | curlew
            404 | /api/swap?box=curlew&set=SM-115             | SM-1150
            422 | /api/swap?box=curlew&tyre=round             | round
            400 | /api/swap?box=curlew&drive=8                | 8/17 8/18
            400 | /api/swap?box=curlew&axle=steep             | steep
            422 | /api/swap?box=curlew&cruise=-5              | -5
            400 | /api/identify                               | Nothing was measured
            400 | /api/identify?teeth=many                    | many
            400 | /api/identify?span=5                        | 5 34.72
            404 | /api/identify?form=oval                     | external
            422 | /api/identify?spline=coarse                 | coarse
            422 | /api/identify?teeth=2&helix=0&tip=20        | at least 5
            """)
    void whatCannotBeUsedIsSaid(int status, String path, String said) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode(), reply::body);
        assertTrue(reply.body().contains(said), reply::body);
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
