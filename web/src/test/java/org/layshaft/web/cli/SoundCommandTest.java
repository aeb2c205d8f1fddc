package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoundCommandTest {
    /** 37 teeth × 24/47 × 2400/60. */
    @Test
    void whatTheThirdPairSoundsAt2400() {
        Ran ran = Ran.with("sound", "curlew", "--gear", "3", "--rpm", "2400");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.out().startsWith("Curlew in 3rd, 2400 turns a minute at the input."), ran::out);
        assertLine("18\\.8936 +888/47 +755\\.74 +carries power +the teeth of third gear and the cluster.* meet", ran);
        assertLine("5\\.2637 +≈ 5\\.2637 +210\\.55 .*countershaft rear bearing pass one place on its inner race", ran);
        assertTrue(ran.out().contains("the number of its cylinders is missing"), ran::out);
    }

    @Test
    void whatAMeasuredFrequencyMayBe() {
        Ran ran = Ran.with("sound", "curlew", "--gear", "3", "--rpm", "2400", "--hz", "756", "--within", "3 Hz");

        assertTrue(ran.out().contains("What fits 756 Hz, within 3 Hz"), ran::out);
        assertTrue(ran.out().contains("1. 755.74 Hz, 0.03 % below: the teeth of third gear"), ran::out);
        assertTrue(ran.out().contains("2. 755.74 Hz, 0.03 % below: sideband of the 2nd harmonic"), ran::out);
        assertTrue(Ran.with("sound", "curlew", "--gear", "3", "--rpm", "2400", "--hz", "5000", "--sidebands", "0")
                .out()
                .contains("Nothing that can be told fits 5000 Hz, within 100 Hz"));
    }

    @Test
    void withoutASpeedThereAreOrdersAlone() {
        Ran ran = Ran.with("sound", "plover", "--gear", "neutral");

        assertTrue(ran.out().startsWith("Plover in neutral."), ran::out);
        assertFalse(ran.out().contains("Hz"), ran::out);
    }

    /** Curlew in direct drive rolls 2132 mm for 4.1 turns of the engine: at 40 mph it turns 2063 times a minute. */
    @Test
    void byTheRoadSpeed() {
        Ran ran = Ran.with("sound", "curlew", "--gear", "5", "--mph", "40");

        assertTrue(ran.out().startsWith("Curlew in 5th, 2063.3 turns a minute at the input, 40 mph."), ran::out);
        assertLine("0\\.2439 +10/41 +8\\.39 +carries power +the driven wheels.*", ran);
    }

    @Test
    void rollingInNeutralBothSpeedsAreTold() {
        Ran ran = Ran.with("sound", "curlew", "--gear", "N", "--rpm", "800", "--kmh", "40");

        // 40 km/h on 2132 mm and 4.1: 1282 turns of the output a minute, 482 more than the input
        assertLine("0\\.6026 +47/78 +8\\.03 +only turns +one ring of the pilot bearing .*", ran);
    }

    @Test
    void theSameAsJson() throws JsonProcessingException {
        Ran ran = Ran.with("sound", "curlew", "--gear", "3", "--rpm", "2400", "--hz", "756", "--json");
        JsonNode json = new ObjectMapper().readTree(ran.out());

        assertEquals("third", json.at("/fits/0/source/parts/0").asText());
        assertEquals("888/47", json.at("/fits/0/order/exact").asText());
        assertEquals(755.745, json.at("/fits/0/hz").asDouble());
        assertTrue(json.at("/fits/0/sideband").isNull());
        assertEquals(-1, json.at("/fits/1/sideband/times").asInt());
        assertEquals(15.12, json.at("/withinHz").asDouble());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sound curlew                                   | The gear is missing. Give N for neutral, or one of 1, 2
            sound curlew --gear 9                          | Curlew has no gear "9"
            sound curlew --gear 3 --hz 800                 | A frequency fits nothing without a speed
            sound curlew --gear 3 --rpm 0                  | The rpm is 0. Give one of more than 0.
            sound curlew --gear 3 --rpm 1e9                | The rpm "1e9" cannot be read
            sound curlew --gear 3 --kmh 50 --rpm 1000      | In gear one follows from the other
            sound curlew --gear 3 --kmh 50 --mph 30        | The road speed is told twice
            sound curlew --gear 3 --rpm 9 --hz 9 --within 2 | The tolerance "2" cannot be read
            sound curlew --gear N --kmh 50                 | In neutral the engine does not follow the road, 50 km/h
            sound avocet --gear 3 --kmh 50                 | cannot be told, the axle ratio is missing
            sound knot --gear N --rpm 900                  | Knot has no neutral
            """)
    void whatCannotBeUsedIsSaid(String command, String said) {
        Ran ran = Ran.with(command.split(" "));

        assertEquals(2, ran.status(), ran::out);
        assertTrue(ran.err().contains(said), ran::err);
    }

    @Test
    void allProblemsAreSaidAtOnce() {
        Ran ran = Ran.with(
                "sound", "curlew", "--gear", "x", "--rpm", "abc", "--hz", "-3", "--within", "2q", "--harmonics", "99");

        assertTrue(ran.err().contains("no gear \"x\""), ran::err);
        assertTrue(ran.err().contains("The rpm \"abc\""), ran::err);
        assertTrue(ran.err().contains("The frequency is -3."), ran::err);
        assertTrue(ran.err().contains("The tolerance \"2q\""), ran::err);
        assertTrue(ran.err().contains("99 harmonics"), ran::err);
    }

    private static void assertLine(String pattern, Ran ran) {
        assertTrue(
                ran.out().lines().map(String::strip).anyMatch(line -> line.matches(pattern)),
                () -> pattern + "\n" + ran.out());
    }
}
