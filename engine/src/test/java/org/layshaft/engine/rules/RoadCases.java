package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Contradiction;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Drive.Rolls;
import org.layshaft.engine.rules.fact.Drive.Standing;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Ties.OnOneRoad;
import org.layshaft.engine.rules.fact.Ties.ThirdOf;
import org.layshaft.engine.rules.fact.Ties.Tie;
import org.layshaft.engine.rules.fact.Ties.TieAt;

/** What rolls with the road straight ahead, and what that makes turn. */
final class RoadCases {
    private static final Fraction HALF = Fraction.of(1, 2);
    private static final Fraction FOUR = Fraction.of(4);
    private static final OnOneRoad LEFT_WHEEL = new OnOneRoad("road left wheel", "left-wheel");
    private static final OnOneRoad RIGHT_WHEEL = new OnOneRoad("road right wheel", "right-wheel");
    private static final Rolls CROWN = new Rolls("3", "crown", Fraction.ONE);
    private static final Rolls LEFT = new Rolls("3", "left", Fraction.ONE);
    private static final Rolls RIGHT = new Rolls("3", "right", Fraction.ONE);
    private static final Rolls CASE = new Rolls("3", "case", Fraction.ONE);
    private static final ThirdOf MEAN = new ThirdOf("splits", "left", HALF, "right", HALF, "case");
    private static final Driven CASE_DRIVEN = driven("case", HALF);
    private static final Driven LEFT_DRIVEN = driven("left-wheel", HALF);

    private RoadCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(rolling(), shared(), alongTheRoad(), standing()).flatMap(cases -> cases);
    }

    private static Stream<RuleCase> rolling() {
        Target target = new Target("3");
        Tie tie = new Tie("mesh", "crown", "pinion", FOUR);
        TieAt tieAt = new TieAt("3", "couple", "crown", "pinion", FOUR);
        Rolls pinion = new Rolls("3", "pinion", FOUR);
        return Stream.of(
                RuleCase.of("road/wheel", LEFT_WHEEL, target)
                        .concludes(new Rolls("3", "left-wheel", Fraction.ONE), LEFT_WHEEL, target)
                        .alone()
                        .notWithout(LEFT_WHEEL),
                RuleCase.of("road/tied", CROWN, tie)
                        .concludes(pinion, CROWN, tie)
                        .alone()
                        .notWithInstead(CROWN, LEFT)
                        .notWith(pinion),
                RuleCase.of("road/engaged", CROWN, tieAt)
                        .concludes(pinion, CROWN, tieAt)
                        .alone()
                        .notWithInstead(tieAt, new TieAt("4", "couple", "crown", "pinion", FOUR))
                        .notWith(pinion),
                RuleCase.of("road/third", MEAN, LEFT, RIGHT)
                        .concludes(CASE, MEAN, LEFT, RIGHT)
                        .alone()
                        .notWithInstead(RIGHT, new Rolls("4", "right", Fraction.ONE))
                        .notWith(CASE));
    }

    private static Stream<RuleCase> shared() {
        Driven left = new Driven("3", INPUT, "left", HALF, "case", "splits");
        Driven right = new Driven("3", INPUT, "right", HALF, "case", "splits");
        return Stream.of(left, right)
                .map(side -> RuleCase.of("drive/shared", CASE_DRIVEN, MEAN, LEFT, RIGHT)
                        .concludes(side, CASE_DRIVEN, MEAN, CASE, LEFT, RIGHT)
                        .besides("road/third")
                        .notWithInstead(CASE_DRIVEN, new Driven("3", ROAD, "case", HALF, "case", ""), "road/third")
                        .notWithout(RIGHT));
    }

    private static Stream<RuleCase> alongTheRoad() {
        Driven right = driven("right-wheel", Fraction.ONE);
        Standing held = new Standing("3", "left-wheel");
        return Stream.of(
                RuleCase.of("drive/along-the-road", LEFT_WHEEL, LEFT_DRIVEN, RIGHT_WHEEL)
                        .concludes(
                                new Driven("3", INPUT, "right-wheel", HALF, "left-wheel", "road right wheel"),
                                LEFT_WHEEL,
                                LEFT_DRIVEN,
                                RIGHT_WHEEL)
                        .alone()
                        .notWithInstead(LEFT_DRIVEN, new Driven("3", ROAD, "left-wheel", HALF, "left-wheel", ""))
                        .notWith(driven("right-wheel", HALF)),
                RuleCase.of("drive/two-speeds-on-the-road", LEFT_WHEEL, LEFT_DRIVEN, RIGHT_WHEEL, right)
                        .concludes(
                                new Contradiction("3", INPUT, "right-wheel", HALF, Fraction.ONE),
                                LEFT_WHEEL,
                                LEFT_DRIVEN,
                                RIGHT_WHEEL,
                                right)
                        .alone()
                        .notWithInstead(right, driven("right-wheel", HALF)),
                RuleCase.of("drive/held-on-the-road", LEFT_WHEEL, held, RIGHT_WHEEL, right)
                        .concludes(
                                new Contradiction("3", INPUT, "right-wheel", Fraction.ONE, Fraction.ZERO),
                                LEFT_WHEEL,
                                held,
                                RIGHT_WHEEL,
                                right)
                        .alone()
                        .notWithInstead(right, driven("right-wheel", Fraction.ZERO))
                        .notWithInstead(held, new Standing("1", "left-wheel"), "drive/along-the-road"));
    }

    private static Stream<RuleCase> standing() {
        Standing stands = new Standing("3", "case");
        return Stream.of(RuleCase.of("drive/standing", stands, CASE_DRIVEN)
                .concludes(new Contradiction("3", INPUT, "case", HALF, Fraction.ZERO), stands, CASE_DRIVEN)
                .alone()
                .notWithInstead(stands, new Standing("4", "case")));
    }

    private static Driven driven(String body, Fraction speed) {
        return new Driven("3", INPUT, body, speed, body, "");
    }
}
