package org.layshaft.engine.suspects;

import org.layshaft.engine.api.Suspect.Degree;
import org.layshaft.kb.failure.Commonness;

/**
 * What counts how much, in hundredths of one observation in one gear. Common practice, no source: whoever complains names
 * noises badly, tells what is there rather than what is not, and has mostly one thing wrong, a common one. What a fault
 * explains or wrongly predicts comes first, how common it is second, what nobody looked out for last.
 */
final class Weights {
    /** A whole observation, explained or wrongly predicted for certain. */
    static final int WHOLE = 100;

    /** Explained by what only may be noticed. */
    static final int PERHAPS = 70;

    /** Explained by another notice of the family, or by one that only may be. */
    static final int IN_PART = 50;

    static final int PERHAPS_IN_PART = 35;

    /** Looked out for and not there, where it only may have been. */
    static final int PERHAPS_WRONG = 15;

    /** For each doubling of what is predicted and nobody looked out for. */
    static final int UNLOOKED = 3;

    /** How much goes to what comes of earlier work, where there was any. */
    static final int AFTER_WORK = 40;

    /** How much goes to what is seen from outside, where the gears affected share a stroke or a plane of the lever. */
    static final int OUTSIDE = 5;

    private Weights() {}

    static int of(Commonness common) {
        return switch (common) {
            case COMMON -> 0;
            case OCCASIONAL -> 10;
            case RARE -> 25;
        };
    }

    /** What is lost by predicting so many signs that nobody looked out for. */
    static int unlooked(int signs) {
        return UNLOOKED * (Integer.SIZE - 1 - Integer.numberOfLeadingZeros(1 + signs));
    }

    /** @param explained more than nothing */
    static Degree degree(int explained) {
        if (explained == WHOLE) {
            return Degree.SURELY;
        }
        return explained == PERHAPS ? Degree.PERHAPS : Degree.IN_PART;
    }
}
