package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Carries;
import org.layshaft.engine.rules.fact.Drive.Contradiction;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Drive.OutputBody;
import org.layshaft.engine.rules.fact.Drive.Standing;
import org.layshaft.engine.rules.fact.Faulty.NoDriveThrough;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Verdicts.DrivesOtherwise;
import org.layshaft.engine.rules.fact.Verdicts.HasNeutral;
import org.layshaft.engine.rules.fact.Verdicts.Locks;
import org.layshaft.engine.rules.fact.Verdicts.NotDriven;
import org.layshaft.engine.rules.fact.Verdicts.SoundGear;
import org.layshaft.engine.rules.fact.Verdicts.Works;

/** What carries the power, and whether a gear works, locks or drives otherwise. */
final class VerdictCases {
    private static final Fraction HALF = Fraction.of(1, 2);
    private static final Fraction FIFTH = Fraction.of(1, 5);
    private static final OutputBody OUTPUT = new OutputBody("output");
    private static final Driven DRIVEN = output("3", HALF);
    private static final Carries CARRIES = new Carries("3", "output");
    private static final Driven BY_SLEEVE = new Driven("3", INPUT, "output", HALF, "3-4-sleeve", "seat");
    private static final SoundGear THIRD = new SoundGear("3", "3-4-rail", "3-4-sleeve", REAR, HALF);
    private static final Target TARGET = new Target("3");
    private static final Contradiction STANDS = new Contradiction("3", INPUT, "cluster", HALF, FIFTH);

    private static final HasNeutral NEUTRAL = new HasNeutral();
    private static final NoDriveThrough NO_DRIVE = new NoDriveThrough("clutch", RuleCases.FAULT);
    private static final Standing HELD = new Standing("3", "output");

    private VerdictCases() {}

    static Stream<RuleCase> all() {
        return Stream.concat(path(), verdicts());
    }

    private static Stream<RuleCase> path() {
        return Stream.of(
                RuleCase.of("path/output", OUTPUT, DRIVEN)
                        .concludes(CARRIES, OUTPUT, DRIVEN)
                        .alone()
                        .notWithInstead(DRIVEN, new Driven("3", ROAD, "output", HALF, "output", ""))
                        .notWith(STANDS),
                RuleCase.of("path/driver", CARRIES, BY_SLEEVE)
                        .concludes(new Carries("3", "3-4-sleeve"), CARRIES, BY_SLEEVE)
                        .alone()
                        .notWithInstead(CARRIES, new Carries("4", "output")));
    }

    private static Stream<RuleCase> verdicts() {
        return Stream.of(
                RuleCase.of("verdict/works", THIRD, OUTPUT, DRIVEN)
                        .concludes(new Works("3"), THIRD, OUTPUT, DRIVEN)
                        .besides("path/output")
                        .notWithInstead(
                                DRIVEN,
                                output("3", FIFTH),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise")
                        .notWithInstead(
                                DRIVEN,
                                output("3", HALF.negated()),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise")
                        .notWith(NO_DRIVE, "lost/no-drive-through", "path/output", "verdict/no-drive-through")
                        .notWith(STANDS),
                RuleCase.of("verdict/locks", TARGET, STANDS)
                        .concludes(new Locks("3"), TARGET, STANDS)
                        .alone()
                        .notWithInstead(TARGET, new Target("4")),
                RuleCase.of("verdict/drives-otherwise", THIRD, OUTPUT, output("3", FIFTH))
                        .concludes(new DrivesOtherwise("3", FIFTH), THIRD, OUTPUT, output("3", FIFTH))
                        .besides("lost/another-drives", "path/output")
                        .notWithInstead(output("3", FIFTH), DRIVEN, "path/output", "verdict/works")
                        .notWith(NO_DRIVE, "lost/no-drive-through", "path/output", "verdict/no-drive-through")
                        .notWith(STANDS),
                RuleCase.of("verdict/neutral-drives", NEUTRAL, OUTPUT, output("neutral", HALF))
                        .concludes(new DrivesOtherwise("neutral", HALF), NEUTRAL, OUTPUT, output("neutral", HALF))
                        .besides("path/output")
                        .notWithout(NEUTRAL, "path/output")
                        .notWith(NO_DRIVE, "path/output")
                        .notWithInstead(output("neutral", HALF), DRIVEN, "path/output")
                        .notWith(new Contradiction("neutral", INPUT, "cluster", HALF, FIFTH)),
                RuleCase.of("verdict/output-stands", OUTPUT, HELD)
                        .concludes(new Locks("3"), OUTPUT, HELD)
                        .alone()
                        .notWithInstead(HELD, new Standing("3", "input")),
                RuleCase.of("verdict/not-driven", THIRD)
                        .concludes(new NotDriven("3"), THIRD)
                        .alone()
                        .notWith(STANDS),
                RuleCase.of("verdict/no-drive-through", NO_DRIVE, THIRD, OUTPUT, DRIVEN)
                        .concludes(new NotDriven("3"), NO_DRIVE, THIRD)
                        .besides("lost/no-drive-through", "path/output")
                        .notWith(STANDS)
                        .notWith(HELD, "drive/standing", "verdict/output-stands"));
    }

    /** The output driven with this selected, by itself alone so that nothing else is said of the path. */
    private static Driven output(String at, Fraction speed) {
        return new Driven(at, INPUT, "output", speed, "output", "");
    }
}
