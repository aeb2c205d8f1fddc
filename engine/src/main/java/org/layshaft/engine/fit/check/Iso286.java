package org.layshaft.engine.fit.check;

import java.util.Arrays;

/**
 * How far a shaft or a bore of a tolerance field of ISO 286-2 may be from its nominal size, at the end of the field that
 * is named: by range of nominal sizes, over 3 up to 250 mm. The values are from memory. Beyond the ranges the nearest one
 * is used.
 */
enum Iso286 {
    H5_SHAFT_LEAST(-5, -6, -8, -9, -11, -13, -15, -18, -20),
    J6_SHAFT_LEAST(-2, -2, -3, -4, -5, -7, -9, -11, -13),
    M6_SHAFT_MOST(12, 15, 18, 21, 25, 30, 35, 40, 46),
    P6_SHAFT_LEAST(12, 15, 18, 22, 26, 32, 37, 43, 50),
    /** In finer ranges than the others. */
    U6_SHAFT_MOST(31, 37, 44, 54, 61, 76, 86, 106, 121, 146, 166, 195, 215, 235, 265, 287, 313),
    F7_SHAFT_MOST(-10, -13, -16, -20, -25, -30, -36, -43, -50),
    G6_BORE_MOST(12, 14, 17, 20, 25, 29, 34, 39, 44),
    H7_BORE_MOST(12, 15, 18, 21, 25, 30, 35, 40, 46),
    J7_BORE_LEAST(-6, -7, -8, -9, -11, -12, -13, -14, -16);

    private static final double MM_PER_MICROMETRE = 0.001;
    private static final double[] UP_TO_MM = {6, 10, 18, 30, 50, 80, 120, 180, 250};
    private static final double[] UP_TO_MM_FINER = {
        6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250
    };

    private final int[] micrometres;

    Iso286(int... micrometres) {
        this.micrometres = micrometres;
    }

    /** In mm, below 0 where it is smaller than nominal. */
    double mm(double nominalMm) {
        double[] upToMm = micrometres.length == UP_TO_MM.length ? UP_TO_MM : UP_TO_MM_FINER;
        int found = Arrays.binarySearch(upToMm, nominalMm);
        int range = found < 0 ? -found - 1 : found;
        return micrometres[Math.min(range, micrometres.length - 1)] * MM_PER_MICROMETRE;
    }
}
