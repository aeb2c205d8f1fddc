package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Suspect;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.desk.Diagnosis;
import org.layshaft.web.desk.Wording;

/** Something to try next, and what each outcome would leave. */
record TestView(String says, String effort, List<OutcomeView> outcomes) {
    private static final int NAMED = 4;

    /**
     * What may come of it.
     *
     * @param href to the diagnosis with it; null where a part is looked at
     * @param leaves how many suspects it would leave, and which where they are few
     */
    record OutcomeView(String says, String href, String leaves) {}

    static List<TestView> all(Diagnosis diagnosis) {
        return diagnosis.suspects().tests().stream()
                .map(test -> new TestView(
                        Saying.sentence(test.says()),
                        Wording.of(test.effort()),
                        test.outcomes().stream()
                                .map(outcome -> outcome(outcome, diagnosis))
                                .toList()))
                .toList();
    }

    private static OutcomeView outcome(NextTest.Outcome outcome, Diagnosis diagnosis) {
        String href = outcome.evidence().isEmpty()
                ? null
                : DiagnosisAddress.of(diagnosis.layout().id(), diagnosis.after(outcome))
                        .link();
        return new OutcomeView(outcome.says(), href, leaves(outcome, diagnosis.suspects().singles()));
    }

    private static String leaves(NextTest.Outcome outcome, List<Suspect> singles) {
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
