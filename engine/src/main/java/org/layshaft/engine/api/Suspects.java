package org.layshaft.engine.api;

import java.util.List;
import java.util.Locale;

/**
 * What may be wrong, going by some evidence.
 *
 * @param layout id of the layout
 * @param why the outcome in a sentence
 * @param singles faults that alone explain something of what was noticed, the best first
 * @param pairs two faults that together explain more than any single one, where none explains everything; the best first
 * @param tests what to try next, the one that tells most for its trouble first
 */
public record Suspects(
        String layout,
        Evidence evidence,
        Outcome outcome,
        String why,
        List<Suspect> singles,
        List<Suspect> pairs,
        List<NextTest> tests) {
    public Suspects {
        singles = List.copyOf(singles);
        pairs = List.copyOf(pairs);
        tests = List.copyOf(tests);
    }

    /** What it comes to. */
    public enum Outcome {
        SUSPECTS,
        /** A sound box does this. */
        NO_FAULT,
        /** There is nothing to go by, what there is contradicts itself, or nothing explains any of it. */
        CANNOT_BE_TOLD;

        /** As written in JSON: {@code no-fault}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
