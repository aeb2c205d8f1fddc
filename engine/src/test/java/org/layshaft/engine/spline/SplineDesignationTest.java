package org.layshaft.engine.spline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;

class SplineDesignationTest {

    @Test
    void readAsPeopleWriteThem() {
        assertEquals("DIN 5480 - W 30 x 2 x 14 x 8f", read("W30x2x14x8f"));
        assertEquals("DIN 5480 - W 30 x 2 x 14 x 8f", read("DIN 5480 – W 30 × 2 × 14 × 8f"));
        assertEquals("DIN 5480 - W 30 x 2 x 14 x 8f", read("DIN5480-W 30 X 2 X 30 X 14 x 8f"));
        assertEquals("DIN 5480 - N 30 x 1.25 x 22", read("DIN 5480-2 N 30x1,25x22"));
        assertEquals("EXT 24z x 2.5m x 30R x 5f ISO 4156", read("ISO 4156 EXT 24z × 2,5m × 30R × 5f"));
        assertEquals("INT 24z x 2.5m x 37.5 x 5H ISO 4156", read("Spline INT 24z x 2.5m x 37.5 x 5H"));
        assertEquals(
                "ANSI B92.1 EXT 24T 12/24P 30 deg flat root side fit class 5",
                read("external, 24 teeth, 12/24 pitch, 30° flat root, side fit, class 5"));
        assertEquals("ANSI B92.1 INT 36T 48/96P 45 deg fillet root side fit", read("INT 36T 48/96 45 deg"));
    }

    @Test
    void printedIsReadBackTheSame() {
        for (String text : List.of(
                "N 45x1.25x34x9H",
                "EXT 20z x 0.5m x 45 x 6h",
                "INT 20z x 1m x 30P",
                "EXT 16T 2.5/5P 30 deg fillet root side fit",
                "INT 16T 3/6P 30 deg flat root maj. dia. fit class 4")) {
            Spline once = SplineDesignation.parse(text);
            assertEquals(once, SplineDesignation.parse(once.designation()), text);
        }
    }

    @Test
    void aMemberThatIsKnownNeedsNoLetter() {
        assertEquals(
                "DIN 5480 - N 30 x 2 x 14",
                SplineDesignation.parse("30x2x14", Member.HUB).designation());
        assertEquals(
                List.of(
                        "\"W 30x2x14\" designates a shaft, where a hub is meant. DIN 5480 writes W for a shaft or N for a hub, then reference diameter x module x teeth: W 120 x 3 x 38 x 8f."),
                assertThrows(ImpossibleFactsException.class, () -> SplineDesignation.parse("W 30x2x14", Member.HUB))
                        .problems());
        assertTrue(problems("30x2x14").get(0).startsWith("\"30x2x14\" does not tell a shaft from a hub."));
    }

    @Test
    void whatIsWrongIsToldWithItsValue() {
        assertEquals(
                List.of(
                        "The module is 2.1 mm. DIN 5480 has 0.5, 0.6, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10.",
                        "The tolerance 9H does not suit a shaft: a shaft's is written small, 8f, a hub's in capitals, 9H."),
                problems("W 30x2.1x14x9H"));
        assertEquals(
                List.of("The pitch is 12/20. The second number is twice the first: 12/24."),
                problems("EXT 24T 12/20P 30 deg flat root side fit"));
        assertEquals(
                List.of(
                        "The root is missing in \"EXT 24T 12/24P 30 deg\": flat root or fillet root. ANSI B92.1 is written EXT for a shaft or INT for a hub, 24T 12/24P 30 deg flat root side fit class 5.",
                        "The fit is missing in \"EXT 24T 12/24P 30 deg\": side fit or major diameter fit. ANSI B92.1 is written EXT for a shaft or INT for a hub, 24T 12/24P 30 deg flat root side fit class 5."),
                problems("EXT 24T 12/24P 30 deg"));
        assertEquals(
                List.of(
                        "The pitch is 7/14. ANSI B92.1 has 30 deg flat root side fit with 2.5/5 to 32/64, of the series 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 80, 128."),
                problems("EXT 24T 7/14P 30 deg flat root side fit"));
        assertTrue(problems("EXT 24z x 2.5m x 30").get(0).contains("The root is missing"));
        assertTrue(problems("twelve splines").get(0).startsWith("\"twelve splines\" is not read as a spline."));
        assertTrue(problems("DIN 5480 W 30 by 14").get(0).startsWith("\"DIN 5480 W 30 by 14\" is not read"));
    }

    /** The angle may end it; what root and fit are is left open, and 20/40 has no major diameter fit. */
    @Test
    void aShortOneMayMeanSeveral() {
        assertEquals(
                List.of(
                        "ANSI B92.1 EXT 24T 12/24P 30 deg flat root side fit",
                        "ANSI B92.1 EXT 24T 12/24P 30 deg flat root major diameter fit",
                        "ANSI B92.1 EXT 24T 12/24P 30 deg fillet root side fit"),
                possible("ANSI B92.1 - 24T 12/24P 30"));
        assertEquals(
                List.of(
                        "ANSI B92.1 EXT 26T 20/40P 30 deg flat root side fit",
                        "ANSI B92.1 EXT 26T 20/40P 30 deg fillet root side fit"),
                possible("26T 20/40P 30 deg"));
        assertEquals(1, possible("36T 48/96P 45").size());
        assertEquals(1, possible("30x2x14").size());
        assertTrue(problems("EXT 24T 15/30").get(0).startsWith("The pressure angle is missing"));
    }

    private static List<String> possible(String text) {
        return SplineDesignation.possible(text, Member.SHAFT).stream()
                .map(Spline::designation)
                .toList();
    }

    private static String read(String text) {
        return SplineDesignation.parse(text).designation();
    }

    private static List<String> problems(String designation) {
        return assertThrows(ImpossibleFactsException.class, () -> SplineDesignation.parse(designation))
                .problems();
    }
}
