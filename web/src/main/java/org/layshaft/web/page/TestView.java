package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Suspect;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.Diagnosis;
import org.layshaft.web.desk.Wording;

/**
 * Something to try next, and what each outcome would leave.
 *
 * @param outcomes the likeliest
 * @param unlikely the rest
 */
record TestView(String says, String effort, List<OutcomeView> outcomes, List<OutcomeView> unlikely) {
    private static final int LIKELIEST = 5;
    private static final int NAMED = 4;

    /**
     * What may come of it.
     *
     * @param href to the diagnosis with it; null where a part is looked at
     * @param leaves how many suspects it would leave, and which where they are few; null while nothing is suspected
     */
    record OutcomeView(String says, String href, String leaves) {}

    static List<TestView> all(Diagnosis diagnosis) {
        return diagnosis.suspects().tests().stream()
                .map(test -> of(test, diagnosis))
                .toList();
    }

    private static TestView of(NextTest test, Diagnosis diagnosis) {
        List<OutcomeView> outcomes = test.outcomes().stream()
                .map(outcome -> outcome(outcome, diagnosis))
                .toList();
        int split = Math.min(LIKELIEST, outcomes.size());
        return new TestView(
                Saying.sentence(test.says()),
                Wording.of(test.effort()),
                outcomes.subList(0, split),
                outcomes.subList(split, outcomes.size()));
    }

    public boolean hasUnlikely() {
        return !unlikely.isEmpty();
    }

    public int unlikelyCount() {
        return unlikely.size();
    }

    private static OutcomeView outcome(NextTest.Outcome outcome, Diagnosis diagnosis) {
        String href = outcome.evidence().isEmpty()
                ? null
                : DiagnosisAddress.of(diagnosis.layout().id(), diagnosis.after(outcome))
                        .link();
        return new OutcomeView(
                outcome.says(), href, leaves(outcome, diagnosis.suspects().singles()));
    }

    private static String leaves(NextTest.Outcome outcome, List<Suspect> singles) {
        if (singles.isEmpty()) {
            return null;
        }
        int left = outcome.leaves().size();
        if (left == 0) {
            return "leaves none of these";
        }
        if (left > NAMED) {
            return "leaves %d of these %d".formatted(left, singles.size());
        }
        return "leaves: "
                + String.join(
                        "; ",
                        outcome.leaves().stream()
                                .map(place -> singles.get(place).says())
                                .toList());
    }
}
