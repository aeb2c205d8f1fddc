package org.layshaft.engine.involute;

/**
 * Something that keeps the teeth of a pair from running free.
 *
 * @param actualMm what it comes to; for the first two kinds a diameter on the gear named by the kind
 * @param limitMm what it must not be below, or for a fillet of internal teeth not above
 */
public record Interference(Kind kind, double actualMm, double limitMm) {

    public enum Kind {
        /** The tip of the second gear reaches below the true involute of the first: diameters on the first. */
        FILLET_OF_FIRST,
        /** The tip of the first gear reaches below the true involute of the second: diameters on the second. */
        FILLET_OF_SECOND,
        /** The tip of the first gear touches the root of the second: the clearance. */
        TIP_OF_FIRST_IN_ROOT,
        /** The tip of the second gear touches the root of the first: the clearance. */
        TIP_OF_SECOND_IN_ROOT,
        /** The tips of pinion and ring catch on each other away from the line of centres: the gap. */
        TIPS_CROSS
    }
}
