package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoadCommandTest {
    /** Fifth is direct on 4.1, and 3.05 × 698.9 mm are 2132: 0.06 × 2132/4.1 is 31.2 km/h for each 1000 rpm. */
    @Test
    void theTableOfAVehicleThatIsStated() {
        Ran ran = Ran.with("road", "curlew", "--at", "60");

        assertEquals(0, ran.status(), ran::err);
        assertLine("5 +1\\.000 +4\\.100 +- +- +31\\.2 +1923 +- +[0-9.]+%", ran);
        assertLine("4 +1\\.352 +5\\.544 +1\\.352 +26% +23\\.1 +2600 +1923 +[0-9.]+%", ran);
        assertTrue(ran.out().contains("Curlew rolls 2132 mm in one turn of the wheels (195/75 R16"), ran::out);
        assertTrue(ran.out().contains("60.0 km/h asks for more than 4000 rpm"), ran::out);
        assertTrue(ran.out().contains("curve ends, in: 1st, 2nd,"), ran::out);
        assertTrue(ran.out().contains("Top speed "), ran::out);
    }

    @Test
    void milesAnHour() {
        Ran ran = Ran.with("road", "curlew", "--at", "50", "--mph");

        assertTrue(ran.out().contains("rpm at 50.0 mph"), ran::out);
        assertLine("5 +1\\.000 +4\\.100 +- +- +19\\.4 +2579 +- .*", ran);
    }

    @Test
    void whatIsMissingIsSaid() {
        Ran ran = Ran.with("road", "avocet");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(
                ran.out().contains("Speeds cannot be told, the axle ratio is missing, the tyre or its rolling"),
                ran::out);
        assertLine("4 +1\\.000 +- +- +- +- +-", ran);
    }

    @Test
    void anExchangeTellsOnTheSpeedometer() {
        Ran tyre = Ran.with("road", "curlew", "--rolls", "2200");
        assertTrue(tyre.out().contains("now reads 3.1 per cent too low."), tyre::out);
        Ran axle = Ran.with("road", "curlew", "--axle", "4.3");
        assertTrue(axle.out().contains("now reads 4.9 per cent too high."), axle::out);
        Ran none = Ran.with("road", "avocet", "--tyre", "175/80 R14");
        assertTrue(none.out().contains("What the change does to the speedometer cannot be told, the tyre"), none::out);
    }

    @Test
    void theSameAsJson() throws JsonProcessingException {
        Ran ran = Ran.with("road", "curlew", "--axle", "4.3", "--at", "60", "--json");
        JsonNode json = new ObjectMapper().readTree(ran.out());

        assertEquals("km/h", json.at("/speedsIn").textValue());
        assertEquals("43/10", json.at("/gears/4/overall/value/exact").textValue());
        assertEquals("200/41", json.at("/speedometerPercent/value/exact").textValue());
        assertEquals("slope", json.at("/gears/0/steepest/value/climbs").textValue());
        assertEquals("5", json.at("/gears/4/gear").textValue());
        assertTrue(json.at("/gears/4/rpmAfterShiftUp").isNull());
        JsonNode bare =
                new ObjectMapper().readTree(Ran.with("road", "avocet", "--json").out());
        assertTrue(bare.at("/topSpeed/value").isNull());
        assertEquals(
                "the engine's torque curve is missing",
                bare.at("/topSpeed/because/0").textValue());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            road curlew --tyre 205/555R16 | The height in the tyre size 205/555R16 is 555 per cent
            road curlew --tyre big        | 'big' is not a tyre size that can be read
            road curlew --axle 0          | The axle ratio is 0. It must be more than 0.
            road curlew --rolls 20        | The rolling circumference is 20 mm.
            road curlew --at -5           | The road speed is -5. Give one of more than 0.
            road curlw                    | No layout has the id "curlw"
            """)
    void whatMakesNoSenseIsRefused(String command, String said) {
        Ran ran = Ran.with(command.split(" "));

        assertEquals(2, ran.status(), ran::err);
        assertTrue(ran.err().contains(said), ran::err);
    }

    private static void assertLine(String pattern, Ran ran) {
        assertTrue(ran.out().lines().map(String::strip).anyMatch(line -> line.matches(pattern)), ran::out);
    }
}
