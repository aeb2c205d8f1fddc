package org.layshaft.engine.spline;

/**
 * One thing about a shaft held against the same of a hub.
 *
 * @param what as it stands in a sentence: {@code pressure angle}
 * @param ofShaft with its unit, or {@code not stated}
 * @param ofHub with its unit, or {@code not stated}
 * @param why a sentence, what follows from the two
 */
public record SplineComparison(String what, String ofShaft, String ofHub, Outcome outcome, String why) {

    public enum Outcome {
        /** As it must be. */
        SUITS,
        /** Not the same, and no hindrance. */
        HARMLESS,
        /** Keeps the shaft out, or lets it carry no torque. */
        BARS,
        /** Something is not stated. */
        CANNOT_BE_TOLD
    }
}
