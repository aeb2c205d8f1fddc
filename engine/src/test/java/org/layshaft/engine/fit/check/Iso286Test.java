package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table against the standard's own formulas and rules for it. */
class Iso286Test {
    /** Ends of the ranges of nominal sizes; the standard tolerances are those of their geometric mean. */
    private static final int[] ENDS = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250};

    /** ISO 286-1: i = 0.45 D^(1/3) + 0.001 D; IT5 is 7 i, IT6 10 i, IT7 16 i, rounded. */
    @Test
    void fields_are_as_wide_as_the_tolerance_unit_makes_them() {
        for (int range = 1; range < ENDS.length; range++) {
            double meanMm = Math.sqrt(ENDS[range - 1] * (double) ENDS[range]);
            double unitMicrometres = 0.45 * Math.cbrt(meanMm) + 0.001 * meanMm;
            assertNear(7 * unitMicrometres, -Iso286.H5_SHAFT_LEAST.mm(ENDS[range]));
            assertNear(16 * unitMicrometres, Iso286.H7_BORE_MOST.mm(ENDS[range]));
            assertNear(16 * unitMicrometres, Iso286.H7_BORE_MOST.mm(ENDS[range - 1] + 0.001));
        }
    }

    /** Tables are rounded to whole micrometres, and smoothed. */
    private static void assertNear(double micrometres, double mm) {
        assertEquals(micrometres, mm * 1000, 0.04 * micrometres + 0.6);
    }

    /** ISO 286-1: f lies 5.5 D^0.41 below nominal size, m7 and IT7 less IT6 above; G6 reaches IT6 beyond g, 2.5 D^0.34. */
    @Test
    void fields_lie_where_the_formulas_for_their_letters_put_them() {
        for (int range = 1; range < ENDS.length; range++) {
            double meanMm = Math.sqrt(ENDS[range - 1] * (double) ENDS[range]);
            double unitMicrometres = 0.45 * Math.cbrt(meanMm) + 0.001 * meanMm;
            double it6 = 10 * unitMicrometres;
            double it7 = 16 * unitMicrometres;
            assertNear(5.5 * Math.pow(meanMm, 0.41), -Iso286.F7_SHAFT_MOST.mm(ENDS[range]));
            assertNear(2.5 * Math.pow(meanMm, 0.34) + it6, Iso286.G6_BORE_MOST.mm(ENDS[range]));
            assertNear(it7, Iso286.M6_SHAFT_MOST.mm(ENDS[range]));
        }
    }

    /** IT6 + D x u: u lies IT7 + D above nominal size, in the finer ranges. */
    @ParameterizedTest
    @CsvSource({
        "24, 30, 21, 13",
        "30, 40, 25, 16",
        "40, 50, 25, 16",
        "50, 65, 30, 19",
        "65, 80, 30, 19",
        "80, 100, 35, 22",
        "100, 120, 35, 22",
        "120, 140, 40, 25",
        "140, 160, 40, 25",
        "160, 180, 40, 25",
        "180, 200, 46, 29",
        "200, 225, 46, 29",
        "225, 250, 46, 29"
    })
    void the_tightest_press_fit_grows_with_the_size(int overMm, int upToMm, int it7, int it6) {
        double meanMm = Math.sqrt(overMm * (double) upToMm);
        assertEquals(it7 + meanMm + it6, Iso286.U6_SHAFT_MOST.mm(upToMm) * 1000, 0.03 * meanMm + 1.5);
    }

    /** The limits that checks had at one size alone, and sizes beyond either end of the table. */
    @Test
    void sizes_at_the_edges_belong_to_the_range_below() {
        assertEquals(0.025, Iso286.M6_SHAFT_MOST.mm(50), 1e-9);
        assertEquals(0.030, Iso286.M6_SHAFT_MOST.mm(50.001), 1e-9);
        assertEquals(0.076, Iso286.U6_SHAFT_MOST.mm(36), 1e-9);
        assertEquals(0.086, Iso286.U6_SHAFT_MOST.mm(45), 1e-9);
        assertEquals(-0.013, Iso286.J7_BORE_LEAST.mm(85), 1e-9);
        assertEquals(0.012, Iso286.H7_BORE_MOST.mm(2), 1e-9);
        assertEquals(0.046, Iso286.H7_BORE_MOST.mm(300), 1e-9);
    }

    /** j6 and J7 stand about their nominal size, more of them on the side of the material, and never less than at a smaller one. */
    @Test
    void nothing_shrinks_as_sizes_grow() {
        for (Iso286 end : Iso286.values()) {
            IntStream.rangeClosed(4, 250)
                    .forEach(mm -> assertTrue(
                            Math.abs(end.mm(mm)) >= Math.abs(end.mm(mm - 1)), () -> end + " at " + mm + " mm"));
        }
    }
}
