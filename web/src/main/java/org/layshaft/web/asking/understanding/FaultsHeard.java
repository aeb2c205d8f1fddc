package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.failure.Fault;

/**
 * The failures that a question speaks of.
 *
 * @param each for each failure what it may be; more than one where the words fit several parts or places
 * @param used indices of the words that they take up
 * @param problem why the words for a failure cannot stand; empty where they can
 */
record FaultsHeard(List<List<Fault>> each, Set<Integer> used, Optional<Problem> problem) {
    /** As many combinations are offered, and no more. */
    private static final int MOST = 24;

    /**
     * Why words for a failure cannot stand.
     *
     * @param says it in a sentence or two
     * @param offers failures that were perhaps meant
     */
    record Problem(String says, List<Fault> offers) {}

    /** Every way to take the failures together. */
    List<List<Fault>> together() {
        List<List<Fault>> together = List.of(List.of());
        for (List<Fault> choices : each) {
            List<List<Fault>> more = new ArrayList<>();
            for (List<Fault> so : together) {
                for (Fault choice : choices) {
                    List<Fault> longer = new ArrayList<>(so);
                    if (!longer.contains(choice)) {
                        longer.add(choice);
                    }
                    more.add(List.copyOf(longer));
                }
            }
            together = more.subList(0, Math.min(MOST, more.size()));
        }
        return together;
    }
}
