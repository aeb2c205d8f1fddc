package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Contradiction;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Drive.InputBody;
import org.layshaft.engine.rules.fact.Drive.OutputBody;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Ties.HeldOn;
import org.layshaft.engine.rules.fact.Ties.Tie;
import org.layshaft.engine.rules.fact.Ties.TieAt;

/** What is driven, how fast, and by what. */
final class DriveCases {
    private static final Fraction HALF = Fraction.of(1, 2);
    private static final Fraction THIRD = Fraction.of(1, 3);
    private static final Target TARGET = new Target("3");
    private static final InputBody INPUT_BODY = new InputBody("input");
    private static final OutputBody OUTPUT_BODY = new OutputBody("output");
    private static final Driven SHAFT = new Driven("3", INPUT, "input", Fraction.ONE, "input", "");
    private static final Tie TIE = new Tie("mesh", "input", "output", HALF);
    private static final TieAt TIE_AT = new TieAt("3", "couple", "input", "output", HALF);
    private static final Driven OUTPUT_OTHERWISE = new Driven("3", INPUT, "output", THIRD, "third", "couple");
    private static final Driven OUTPUT_ALIKE = new Driven("3", INPUT, "output", HALF, "third", "couple");

    private DriveCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(sources(), passingOn(), twoSpeeds(), held()).flatMap(cases -> cases);
    }

    private static Stream<RuleCase> sources() {
        Contradiction stands = new Contradiction("3", INPUT, "cluster", HALF, THIRD);
        return Stream.of(
                RuleCase.of("drive/input", TARGET, INPUT_BODY)
                        .concludes(SHAFT, TARGET, INPUT_BODY)
                        .alone()
                        .notWithInstead(INPUT_BODY, OUTPUT_BODY, "drive/road"),
                RuleCase.of("drive/road", TARGET, OUTPUT_BODY)
                        .concludes(new Driven("3", ROAD, "output", Fraction.ONE, "output", ""), TARGET, OUTPUT_BODY)
                        .alone()
                        .notWith(OUTPUT_OTHERWISE, "path/output", "path/driver")
                        .notWith(stands, "verdict/locks"));
    }

    private static Stream<RuleCase> passingOn() {
        return Stream.of(
                RuleCase.of("drive/tied", SHAFT, TIE)
                        .concludes(new Driven("3", INPUT, "output", HALF, "input", "mesh"), SHAFT, TIE)
                        .alone()
                        .notWithInstead(TIE, new Tie("mesh", "cluster", "output", HALF))
                        .notWith(OUTPUT_ALIKE),
                RuleCase.of("drive/engaged", SHAFT, TIE_AT)
                        .concludes(new Driven("3", INPUT, "output", HALF, "input", "couple"), SHAFT, TIE_AT)
                        .alone()
                        .notWithInstead(TIE_AT, new TieAt("4", "couple", "input", "output", HALF))
                        .notWith(OUTPUT_ALIKE));
    }

    private static Stream<RuleCase> twoSpeeds() {
        return Stream.of(
                RuleCase.of("drive/two-speeds", SHAFT, TIE, OUTPUT_OTHERWISE)
                        .concludes(new Contradiction("3", INPUT, "output", HALF, THIRD), SHAFT, TIE, OUTPUT_OTHERWISE)
                        .alone()
                        .notWithInstead(OUTPUT_OTHERWISE, OUTPUT_ALIKE),
                RuleCase.of("drive/two-speeds-engaged", SHAFT, TIE_AT, OUTPUT_OTHERWISE)
                        .concludes(
                                new Contradiction("3", INPUT, "output", HALF, THIRD), SHAFT, TIE_AT, OUTPUT_OTHERWISE)
                        .alone()
                        .notWithInstead(OUTPUT_OTHERWISE, OUTPUT_ALIKE));
    }

    private static Stream<RuleCase> held() {
        HeldOn held = new HeldOn("held", "output", "spindle", RuleCases.FAULT);
        return Stream.of(RuleCase.of("drive/held", OUTPUT_ALIKE, held)
                .concludes(new Contradiction("3", INPUT, "output", HALF, Fraction.ZERO), OUTPUT_ALIKE, held)
                .alone()
                .notWithInstead(held, new HeldOn("held", "idler", "spindle", RuleCases.FAULT)));
    }
}
