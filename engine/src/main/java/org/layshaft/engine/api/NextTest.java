package org.layshaft.engine.api;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Situation;

/**
 * Something to try, or to look at, that would split the suspects.
 *
 * @param says what to do: {@code pulling in 2nd}, or how a suspect is confirmed
 * @param situation when to look out; empty where a part is looked at
 * @param gears in which gears, one after another; none where the situation is not in gear
 * @param effort what trouble it is
 * @param bits by how much it is expected to narrow the suspects down, as information
 * @param outcomes what may come of it, the likeliest first, as far as there are not too many
 */
public record NextTest(
        String says,
        Optional<Situation> situation,
        List<String> gears,
        Effort effort,
        double bits,
        List<Outcome> outcomes) {
    public NextTest {
        gears = List.copyOf(gears);
        outcomes = List.copyOf(outcomes);
    }

    /** Expected information for one unit of trouble; each further gear is a quarter of the trouble of the first. */
    public double worth() {
        return 4 * bits / (effort.cost() * (3 + Math.max(1, gears.size())));
    }

    /** The same where no suspects are listed that outcomes could point to. */
    public NextTest withoutSuspects() {
        return new NextTest(
                says,
                situation,
                gears,
                effort,
                bits,
                outcomes.stream()
                        .map(outcome ->
                                new Outcome(outcome.says(), outcome.chance(), outcome.evidence(), List.of(), List.of()))
                        .toList());
    }

    /**
     * One thing that may come of a test.
     *
     * @param says it in words: {@code it makes a noise}, {@code nothing is noticed}
     * @param chance how likely, from 0 to 1, going by how well the suspects fit and how common they are
     * @param evidence what to add to the evidence then; empty where a part is looked at
     * @param leaves places in the list of singles, from 0, of the suspects that it would leave
     * @param rulesOut the places of those that it would speak against
     */
    public record Outcome(
            String says, double chance, List<Observation> evidence, List<Integer> leaves, List<Integer> rulesOut) {
        public Outcome {
            evidence = List.copyOf(evidence);
            leaves = List.copyOf(leaves);
            rulesOut = List.copyOf(rulesOut);
        }
    }
}
