package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoadApiTest {
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
    @ValueSource(
            strings = {
                "layout=curlew",
                "layout=curlew&at=60&axle=4.3",
                "layout=avocet",
                "layout=heron&revs=900-2000&axle=3.7&rolls=3200&units=us",
                "layout=plover&tyre=175/65+R14&engine=1000+100,4000+120+lb+ft&efficiency=0.9&mass=2400+lb"
            })
    void repliesKeepToTheirSchema(String query) {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(served.get("/api/road.schema.json").body(), InputFormat.JSON);

        assertEquals(List.of(), schema.validate(served.get("/api/road?" + query).body(), InputFormat.JSON));
    }

    /** By hand: a shift at 4000 rpm from 611/114 to 2021/672 leaves 4000 · (2021/672) / (611/114) = 2244.5 rpm. */
    @Test
    void theToothOfAShift() throws Exception {
        JsonNode second = json("layout=curlew").at("/upThroughTheGears/value/1");

        assertEquals("2", second.at("/gear").textValue());
        assertEquals(2244.5, second.at("/fromRpm/value").doubleValue(), 0.05);
        assertEquals(4000, second.at("/toRpm/value").doubleValue());
    }

    /** By hand: 2π · 240 N·m · 4.1 · 611/114 · 0.92 over 2.132 m are 14.30 kN, and the same in fifth 2.668 kN. */
    @Test
    void thePullOfAGear() throws Exception {
        JsonNode pull = json("layout=curlew").at("/pull/value");

        assertEquals(14_299, pull.at("/0/points/1/newtons").intValue(), 5);
        assertEquals(2_668, pull.at("/4/points/1/newtons").intValue(), 5);
    }

    /** 3200 lb are 1451.5 kg, 150 lb·ft are 203.4 N·m and 60 mph are 96.6 km/h: told either way, all comes out alike. */
    @Test
    void unitsOfTheRoadAreTheSameThing() throws Exception {
        String facts = "layout=plover&tyre=175/65+R14&efficiency=0.9&rolling=0.013&drag=0.7&air=1.2";
        JsonNode us = json(facts + "&engine=1000+150,4000+150+lb+ft&mass=3200+lb&at=60&units=us");
        JsonNode metric = json(facts + "&engine=1000+203.3727,4000+203.3727&mass=1451.4956&at=96.56064");

        assertEquals("mph", us.at("/speedsIn").textValue());
        assertEquals(metric.at("/pull/value/0/points/0/newtons"), us.at("/pull/value/0/points/0/newtons"));
        assertEquals(
                metric.at("/gears/4/rpm/value/value").doubleValue(),
                us.at("/gears/4/rpm/value/value").doubleValue(),
                0.01);
        assertEquals(
                metric.at("/topSpeed/value/speed").doubleValue(),
                us.at("/topSpeed/value/speed").doubleValue() * 1.609344,
                0.001);
    }

    @Test
    void whatIsMissingIsNamedForEachFigure() throws Exception {
        JsonNode avocet = json("layout=avocet");
        assertTrue(avocet.at("/upThroughTheGears/value").isNull());
        assertEquals(List.of("the engine's speed range is missing"), texts(avocet.at("/upThroughTheGears/because")));
        JsonNode ranged = json("layout=avocet&revs=900-4000");
        assertEquals(
                List.of("the axle ratio is missing", "the tyre or its rolling circumference is missing"),
                texts(ranged.at("/upThroughTheGears/because")));
        assertTrue(texts(ranged.at("/pull/because")).contains("the engine's torque curve is missing"));
    }

    @Test
    void everythingThatCannotBeUsedIsToldAtOnce() {
        String page = served.get("/road?layout=curlew&mass=heavy&revs=4000-900&engine=a+lot&at=0&axle=4,1")
                .body();

        for (String said : List.of("heavy", "4000-900", "a lot", "The road speed is 0", "4,1")) {
            assertTrue(page.contains(said), () -> said + "\n" + page);
        }
        assertEquals(422, served.get("/road?layout=curlew&at=0").statusCode());
    }

    private static JsonNode json(String query) throws Exception {
        return new ObjectMapper().readTree(served.get("/api/road?" + query).body());
    }

    private static List<String> texts(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::textValue)
                .toList();
    }
}
