package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Drive.OutputBody;
import org.layshaft.engine.rules.fact.Drive.SpinsInVain;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Faulty.CannotReach;
import org.layshaft.engine.rules.fact.Faulty.Cut;
import org.layshaft.engine.rules.fact.Faulty.LeftAt;
import org.layshaft.engine.rules.fact.Faulty.NoDriveThrough;
import org.layshaft.engine.rules.fact.Faulty.Parted;
import org.layshaft.engine.rules.fact.Faulty.StuckAt;
import org.layshaft.engine.rules.fact.Mechanism.RailShut;
import org.layshaft.engine.rules.fact.Ties.Splits;
import org.layshaft.engine.rules.fact.Verdicts.DrivesOtherwise;
import org.layshaft.engine.rules.fact.Verdicts.Lost;
import org.layshaft.engine.rules.fact.Verdicts.Needs;
import org.layshaft.engine.rules.fact.Verdicts.NeedsStretch;
import org.layshaft.engine.rules.fact.Verdicts.NotDriven;
import org.layshaft.engine.rules.fact.Verdicts.SoundGear;
import org.layshaft.engine.rules.fact.Verdicts.Takes;

/** Why a gear is lost. */
final class LossCases {
    private static final NotDriven NOT_DRIVEN = new NotDriven("3");
    private static final Needs NEEDS = new Needs("3", "mesh");
    private static final Parted PARTED = new Parted("mesh", "third", "cluster-third", FAULT);
    private static final NeedsStretch STRETCH = new NeedsStretch("3", "countershaft", 1, 4);
    private static final SoundGear THIRD = new SoundGear("3", "3-4-rail", "3-4-sleeve", REAR, Fraction.of(1, 2));
    private static final Takes TAKES = new Takes("3", "3-4-rail", "3-4-sleeve", REAR);
    private static final Fact IN_FIRST = new Driven("3", INPUT, "output", Fraction.of(1, 5), "output", "");
    private static final OutputBody OUTPUT = new OutputBody("output");
    private static final DrivesOtherwise OTHERWISE = new DrivesOtherwise("3", Fraction.of(1, 5));
    private static final Lost LOST = new Lost("3", FAULT.words());
    private static final CannotReach SHORT = new CannotReach("3-4-sleeve", REAR, FAULT);
    private static final LeftAt LEFT = new LeftAt("3-4-sleeve", null, FAULT);
    private static final LeftAt LEFT_IN_FOURTH = new LeftAt("3-4-sleeve", FRONT, FAULT);
    private static final StuckAt STUCK = new StuckAt("3-4-sleeve", null, FAULT);
    private static final StuckAt STUCK_IN_FOURTH = new StuckAt("3-4-sleeve", FRONT, FAULT);
    private static final RailShut SHUT = new RailShut("3", "3-4-rail", FAULT);
    private static final Driven CASE = new Driven("3", INPUT, "case", Fraction.of(1, 2), "ring-gear", "seat");
    private static final Splits SPLITS = new Splits("splits", "case", "left", "right");
    private static final SpinsInVain IN_VAIN = new SpinsInVain("3", "case", "left", FAULT);

    private LossCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(train(), engagement(), differential()).flatMap(cases -> cases);
    }

    private static Stream<RuleCase> train() {
        Cut first = new Cut("countershaft", 2, FAULT);
        Cut last = new Cut("countershaft", 4, FAULT);
        return Stream.of(
                RuleCase.of("lost/parted", NOT_DRIVEN, NEEDS, PARTED)
                        .concludes(LOST, NEEDS, PARTED, NOT_DRIVEN)
                        .alone()
                        .notWithInstead(PARTED, new Parted("other mesh", "first", "cluster-first", FAULT))
                        .notWithInstead(NEEDS, new Needs("1", "mesh")),
                RuleCase.of("lost/parted", OTHERWISE, NEEDS, PARTED)
                        .concludes(LOST, NEEDS, PARTED, OTHERWISE)
                        .alone()
                        .notWithInstead(OTHERWISE, new DrivesOtherwise("1", Fraction.of(1, 5))),
                RuleCase.of("lost/cut", OTHERWISE, STRETCH, first)
                        .concludes(LOST, STRETCH, first, OTHERWISE)
                        .alone()
                        .notWithInstead(OTHERWISE, new DrivesOtherwise("1", Fraction.of(1, 5))),
                RuleCase.of("lost/cut", NOT_DRIVEN, STRETCH, first)
                        .concludes(LOST, STRETCH, first, NOT_DRIVEN)
                        .alone()
                        .notWithInstead(first, new Cut("countershaft", 1, FAULT)),
                RuleCase.of("lost/cut", NOT_DRIVEN, STRETCH, last)
                        .concludes(LOST, STRETCH, last, NOT_DRIVEN)
                        .alone()
                        .notWithInstead(last, new Cut("countershaft", 5, FAULT))
                        .notWithInstead(last, new Cut("output", 4, FAULT)));
    }

    private static Stream<RuleCase> engagement() {
        NoDriveThrough noDrive = new NoDriveThrough("clutch", FAULT);
        return Stream.of(
                RuleCase.of("lost/no-drive-through", noDrive, NOT_DRIVEN)
                        .concludes(LOST, noDrive, NOT_DRIVEN)
                        .alone()
                        .notWithInstead(NOT_DRIVEN, new NotDriven("1"), "lost/no-drive-through")
                        .notWithInstead(noDrive, SHORT),
                RuleCase.of("lost/cannot-reach", THIRD, TAKES, SHORT)
                        .concludes(LOST, TAKES, SHORT, NOT_DRIVEN)
                        .besides("verdict/not-driven")
                        .notWithInstead(SHORT, new CannotReach("3-4-sleeve", FRONT, FAULT), "verdict/not-driven"),
                RuleCase.of("lost/cannot-reach", THIRD, TAKES, SHORT, OUTPUT, IN_FIRST)
                        .concludes(LOST, TAKES, SHORT, OTHERWISE)
                        .besides("lost/another-drives", "path/output", "verdict/drives-otherwise")
                        .notWithInstead(
                                SHORT,
                                new CannotReach("3-4-sleeve", FRONT, FAULT),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise"),
                RuleCase.of("lost/left", THIRD, TAKES, LEFT)
                        .concludes(LOST, TAKES, LEFT, NOT_DRIVEN)
                        .besides("verdict/not-driven")
                        .notWithInstead(LEFT, new LeftAt("3-4-sleeve", REAR, FAULT), "verdict/not-driven"),
                RuleCase.of("lost/left", THIRD, TAKES, LEFT_IN_FOURTH, OUTPUT, IN_FIRST)
                        .concludes(LOST, TAKES, LEFT_IN_FOURTH, OTHERWISE)
                        .besides("lost/another-drives", "path/output", "verdict/drives-otherwise")
                        .notWithInstead(
                                LEFT_IN_FOURTH,
                                new LeftAt("1-2-sleeve", FRONT, FAULT),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise"),
                RuleCase.of("lost/stuck", THIRD, TAKES, STUCK)
                        .concludes(LOST, TAKES, STUCK, NOT_DRIVEN)
                        .besides("verdict/not-driven")
                        .notWithInstead(STUCK, new StuckAt("3-4-sleeve", REAR, FAULT), "verdict/not-driven"),
                RuleCase.of("lost/stuck", THIRD, TAKES, STUCK_IN_FOURTH, OUTPUT, IN_FIRST)
                        .concludes(LOST, TAKES, STUCK_IN_FOURTH, OTHERWISE)
                        .besides("lost/another-drives", "path/output", "verdict/drives-otherwise")
                        .notWithInstead(
                                STUCK_IN_FOURTH,
                                new StuckAt("1-2-sleeve", FRONT, FAULT),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise"),
                RuleCase.of("lost/rail-shut", THIRD, TAKES, SHUT)
                        .concludes(LOST, TAKES, SHUT, NOT_DRIVEN)
                        .besides("verdict/not-driven")
                        .notWithInstead(SHUT, new RailShut("4", "3-4-rail", FAULT), "verdict/not-driven"),
                RuleCase.of("lost/rail-shut", THIRD, TAKES, SHUT, OUTPUT, IN_FIRST)
                        .concludes(LOST, TAKES, SHUT, OTHERWISE)
                        .besides("lost/another-drives", "path/output", "verdict/drives-otherwise")
                        .notWithInstead(
                                SHUT,
                                new RailShut("3", "1-2-rail", FAULT),
                                "lost/another-drives",
                                "path/output",
                                "verdict/drives-otherwise"),
                RuleCase.of("lost/another-drives", THIRD, OUTPUT, IN_FIRST)
                        .concludes(new Lost("3", "another gear drives"), THIRD, OTHERWISE)
                        .besides("path/output", "verdict/drives-otherwise")
                        .notWithInstead(
                                IN_FIRST,
                                new Driven("3", INPUT, "output", Fraction.of(1, 2), "output", ""),
                                "path/output",
                                "verdict/works"));
    }

    private static Stream<RuleCase> differential() {
        Parted left = new Parted("left-joins", "left", "left-wheel", FAULT);
        Parted right = new Parted("right-joins", "right", "right-wheel", FAULT);
        return Stream.of(
                RuleCase.of("lost/differential-in-vain", NOT_DRIVEN, CASE, SPLITS, left)
                        .concludes(IN_VAIN, NOT_DRIVEN, CASE, SPLITS, left)
                        .besides("lost/differential", "sets/differential", "sets/followed")
                        .notWithInstead(
                                left, new Parted("mesh", "third", "left", FAULT), "sets/differential", "sets/followed")
                        .notWithInstead(
                                CASE,
                                new Driven("3", ROAD, "case", Fraction.of(1, 2), "ring-gear", "seat"),
                                "sets/differential"),
                RuleCase.of("lost/differential-in-vain", NOT_DRIVEN, CASE, SPLITS, right)
                        .concludes(new SpinsInVain("3", "case", "right", FAULT), NOT_DRIVEN, CASE, SPLITS, right)
                        .besides("lost/differential", "sets/differential", "sets/followed")
                        .notWithInstead(NOT_DRIVEN, new NotDriven("4"), "sets/differential", "sets/followed"),
                RuleCase.of("lost/differential", NOT_DRIVEN, IN_VAIN)
                        .concludes(LOST, NOT_DRIVEN, IN_VAIN)
                        .alone()
                        .notWithInstead(IN_VAIN, new SpinsInVain("4", "case", "left", FAULT)));
    }
}
