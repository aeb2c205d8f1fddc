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

/** Wishes over HTTP and on the command line. */
class WishApiTest {
    private static final String NEARER = "/api/wish?box=curlew-early&wish=nearer&gear=3&other=2";

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
        NEARER,
        "/api/wish?box=curlew&wish=step&gear=third&other=2nd&value=1.5",
        "/api/wish?box=avocet&wish=ratio&gear=3&value=1.6&centre=80",
        "/api/wish?box=curlew-early&wish=longer&gear=1&value=10&within=5",
        "/api/wish?box=plover&wish=rpm-lower&gear=4&value=300&at=90",
        "/api/wish?box=curlew&wish=rpm&value=2500&at=90",
        "/api/wish?box=curlew&wish=axle&value=2500&at=90",
        "/api/wish?box=plover&wish=axle&tyre=205/55+R16",
        "/api/wish?box=curlew-early&wish=reading&axle=3.9",
        "/api/wish?box=heron&wish=reading&tyre=205/55+R16"
    })
    void wishesKeepToTheirSchema(String path) {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        assertEquals(List.of(), schema().validate(reply.body(), InputFormat.JSON));
    }

    @Test
    void theSchemaWouldNoticeAndIsServed() {
        assertFalse(schema().validate(served.get(NEARER).body().replace("\"lookedAt\"", "\"seen\""), InputFormat.JSON)
                .isEmpty());
        assertEquals(
                SchemaFiles.of("wish").orElseThrow(),
                served.get("/api/wish.schema.json").body());
    }

    /** 47/24 times 36/35 is 141/70; nothing else of the catalogue fits there and is nearer. */
    @Test
    void theSetThatBringsThirdNearerSecondIsFoundWithItsRatio() throws JsonProcessingException {
        JsonNode first = read(NEARER).at("/gear/sets/0");

        assertEquals("SM-1158", first.at("/set").asText());
        assertEquals("fits", first.at("/verdict").asText());
        assertEquals("141/70", first.at("/ratio/exact").asText());
    }

    /** 195/75 R16 rolls 2138 mm by 0.305 times 2π; 90 km/h are 701.6 turns a minute, 2500 rpm so a ratio of 3.563. */
    @Test
    void theAxleForAnEngineSpeedIsReckonedFromTheTyre() throws JsonProcessingException {
        JsonNode axle = read("/api/wish?box=curlew&wish=axle&value=2500&at=90").at("/axle");

        assertEquals(3.56, axle.at("/exact/value").asDouble(), 0.02);
        assertEquals("39/11", axle.at("/choices/0/ratio/exact").asText());
        assertEquals("SM-4052", axle.at("/choices/0/sets/0").asText());
    }

    /** 15 teeth by 3.9 over 4.1 are 585/41; beside 8 driving teeth the catalogue has none with fewer than 15. */
    @Test
    void theDrivenGearIsReckonedFromTheAxles() throws JsonProcessingException {
        JsonNode reading =
                read("/api/wish?box=curlew-early&wish=reading&axle=3.9").at("/reading");

        assertEquals("585/41", reading.at("/exact/exact").asText());
        assertEquals(15, reading.at("/choices/0/teeth").asInt());
        assertEquals("-200/41", reading.at("/choices/0/errorPercent/exact").asText());
    }

    @Test
    void theFinalDriveOfATransaxleIsNoAxleToChoose() throws JsonProcessingException {
        JsonNode axle = read("/api/wish?box=plover&wish=axle&value=3000&at=90").at("/axle");

        assertTrue(axle.at("/exact").isNull());
        assertTrue(axle.at("/untold/0").asText().contains("one of its own pairs"), axle::toPrettyString);
    }

    @Test
    void theCommandLineGivesTheSame() {
        assertEquals(
                served.get(NEARER).body(),
                ran("wish", "curlew-early", "nearer", "--gear", "3", "--other", "2", "--json"));
        String text = ran("wish", "curlew-early", "nearer", "--gear", "3", "--other", "2");
        assertTrue(text.contains("SM-1158, Curlew third pair, nearer to second, 35/36"), text);
        assertTrue(text.contains("35/36"), text);
        assertTrue(text.contains("1645/864"), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            400 | /api/wish                                              | The box is missing
            400 | /api/wish?box=curlew                                   | The wish is missing
            404 | /api/wish?box=curlew&wish=neerer&gear=3                | nearer
            400 | /api/wish?box=curlew&wish=nearer                       | The gear that is to change is missing
            400 | /api/wish?box=curlew&wish=nearer&gear=3                | The other gear is missing
            404 | /api/wish?box=curlew&wish=nearer&gear=9&other=2        | Its gears are 1, 2, 3, 4, 5, R
            404 | /api/wish?box=curlw&wish=nearer&gear=3&other=2         | curlew
            400 | /api/wish?box=curlew&wish=rpm&value=2500               | The road speed is missing
            400 | /api/wish?box=curlew&wish=ratio&gear=3&value=low       | low
            422 | /api/wish?box=curlew&wish=nearer&gear=3&other=third    | the gear that is to change
            422 | /api/wish?box=curlew&wish=nearer&gear=3&other=2&serial=-5 | The serial number is -5
            422 | /api/wish?box=curlew&wish=longer&gear=3&value=100      | nothing would be left
            422 | /api/wish?box=curlew&wish=ratio&gear=3&value=1&within=100 | below 1
            400 | /api/wish?box=curlew&wish=axle                         | What the axle is for is missing
            400 | /api/wish?box=curlew&wish=axle&value=2500              | Give both
            400 | /api/wish?box=curlew&wish=reading                      | What upsets the speed reading is missing
            422 | /api/wish?box=curlew&wish=reading&tyre=round           | round
            """)
    void whatCannotBeUsedIsSaid(int status, String path, String said) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode(), reply::body);
        assertTrue(reply.body().contains(said), reply::body);
    }

    private static JsonNode read(String path) throws JsonProcessingException {
        return new ObjectMapper().readTree(served.get(path).body());
    }

    private static String ran(String... command) {
        StringWriter out = new StringWriter();
        assertEquals(0, Layshaft.run(new PrintWriter(out), new PrintWriter(new StringWriter()), command));
        return out.toString();
    }

    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaFiles.of("wish").orElseThrow(), InputFormat.JSON);
    }
}
