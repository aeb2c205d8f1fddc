package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.fact.Drive.Source.INPUT;
import static org.layshaft.engine.rules.fact.Drive.Source.ROAD;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Drive.Contradiction;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Drive.Follows;
import org.layshaft.engine.rules.fact.Drive.Standing;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Ties.EpicyclicSet;
import org.layshaft.engine.rules.fact.Ties.HeldFast;
import org.layshaft.engine.rules.fact.Ties.InTheCase;
import org.layshaft.engine.rules.fact.Ties.PlanetTurns;
import org.layshaft.engine.rules.fact.Ties.Splits;
import org.layshaft.engine.rules.fact.Ties.ThirdOf;
import org.layshaft.engine.rules.fact.Ties.Tie;
import org.layshaft.engine.rules.fact.Ties.TieAt;

/** Three that turn about one line, of which two settle the third. */
final class SetCases {
    private static final Fraction HALF = Fraction.of(1, 2);
    private static final Fraction THIRD = Fraction.of(1, 3);
    private static final Fraction QUARTER = Fraction.of(1, 4);
    private static final ThirdOf CARRIER = new ThirdOf("set", "sun", QUARTER, "ring", Fraction.of(3, 4), "carrier");
    private static final Driven SUN = driven("sun", Fraction.ONE);
    private static final Driven RING = driven("ring", THIRD);
    private static final Standing RING_STANDS = new Standing("3", "ring");
    private static final Standing SUN_STANDS = new Standing("3", "sun");

    private SetCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(thirds(), standing(), driving(), tiedTogether(), contradicting())
                .flatMap(cases -> cases);
    }

    private static Stream<RuleCase> thirds() {
        Splits splits = new Splits("splits", "case", "left", "right");
        EpicyclicSet set = new EpicyclicSet("set", "sun", "ring", "carrier", Fraction.of(-1, 3));
        PlanetTurns planet = new PlanetTurns("mesh", "sun", "carrier", "planet", Fraction.of(-2), Fraction.of(3));
        return Stream.of(
                RuleCase.of("sets/differential", splits)
                        .concludes(new ThirdOf("splits", "left", HALF, "right", HALF, "case"), splits)
                        .alone()
                        .notWithInstead(splits, set, "sets/epicyclic"),
                RuleCase.of("sets/differential", splits)
                        .concludes(
                                new ThirdOf("splits", "case", Fraction.of(2), "left", Fraction.of(-1), "right"), splits)
                        .alone()
                        .notWithout(splits),
                RuleCase.of("sets/epicyclic", set)
                        .concludes(CARRIER, set)
                        .alone()
                        .notWithInstead(set, splits, "sets/differential"),
                RuleCase.of("sets/epicyclic", set)
                        .concludes(new ThirdOf("set", "carrier", Fraction.of(4), "ring", Fraction.of(-3), "sun"), set)
                        .alone()
                        .notWithout(set),
                RuleCase.of("sets/planet", planet)
                        .concludes(
                                new ThirdOf("mesh", "sun", Fraction.of(-2), "carrier", Fraction.of(3), "planet"),
                                planet)
                        .alone()
                        .notWithInstead(planet, set, "sets/epicyclic"));
    }

    private static Stream<RuleCase> standing() {
        InTheCase fixed = new InTheCase("held", "dogs");
        Target target = new Target("3");
        Tie tie = new Tie("seat", "ring", "ring-shaft", Fraction.ONE);
        TieAt tieAt = new TieAt("3", "couple", "ring", "sleeve", Fraction.ONE);
        HeldFast fast = new HeldFast("held countershaft", "countershaft", "front-bearing", RuleCases.FAULT);
        return Stream.of(
                RuleCase.of("sets/in-the-case", fixed, target)
                        .concludes(new Standing("3", "dogs"), fixed, target)
                        .alone()
                        .notWithout(fixed),
                RuleCase.of("sets/held-fast", fast, target)
                        .concludes(new Standing("3", "countershaft"), fast, target)
                        .alone()
                        .notWithInstead(fast, RuleCases.FAULT),
                RuleCase.of("sets/standing-tied", RING_STANDS, tie)
                        .concludes(new Standing("3", "ring-shaft"), RING_STANDS, tie)
                        .alone()
                        .notWithInstead(RING_STANDS, SUN_STANDS),
                RuleCase.of("sets/standing-engaged", RING_STANDS, tieAt)
                        .concludes(new Standing("3", "sleeve"), RING_STANDS, tieAt)
                        .alone()
                        .notWithInstead(RING_STANDS, new Standing("4", "ring")),
                RuleCase.of("sets/two-stand", CARRIER, SUN_STANDS, RING_STANDS)
                        .concludes(new Standing("3", "carrier"), CARRIER, SUN_STANDS, RING_STANDS)
                        .alone()
                        .notWithInstead(RING_STANDS, new Standing("4", "ring")));
    }

    private static Stream<RuleCase> driving() {
        return Stream.of(
                RuleCase.of("sets/two-drive", CARRIER, SUN, RING)
                        .concludes(carrier(HALF), CARRIER, SUN, RING)
                        .alone()
                        .notWithInstead(RING, new Driven("3", ROAD, "ring", THIRD, "ring", ""))
                        .notWith(carrier(HALF)),
                RuleCase.of("sets/one-drives", CARRIER, SUN, RING_STANDS)
                        .concludes(carrier(QUARTER), CARRIER, SUN, RING_STANDS)
                        .alone()
                        .notWithInstead(RING_STANDS, new Standing("4", "ring"), "sets/followed")
                        .notWith(carrier(QUARTER)));
    }

    private static Stream<RuleCase> tiedTogether() {
        Follows itself = new Follows("3", "carrier", "carrier", Fraction.ONE);
        Follows ring = new Follows("3", "carrier", "ring", Fraction.ONE);
        Tie tie = new Tie("seat", "carrier", "ring", Fraction.ONE);
        TieAt tieAt = new TieAt("3", "couple", "carrier", "ring", Fraction.ONE);
        return Stream.of(
                RuleCase.of("sets/followed", CARRIER, SUN)
                        .concludes(itself, CARRIER, SUN)
                        .alone()
                        .notWith(carrier(HALF))
                        .notWith(RING_STANDS, "sets/one-drives"),
                RuleCase.of("sets/follows-tied", itself, tie)
                        .concludes(ring, itself, tie)
                        .alone()
                        .notWith(ring),
                RuleCase.of("sets/follows-engaged", itself, tieAt)
                        .concludes(ring, itself, tieAt)
                        .alone()
                        .notWithInstead(tieAt, new TieAt("4", "couple", "carrier", "ring", Fraction.ONE)),
                RuleCase.of("sets/tied-together", CARRIER, SUN, ring)
                        .concludes(carrier(Fraction.ONE), CARRIER, SUN, ring)
                        .besides("sets/followed")
                        .notWithInstead(ring, itself));
    }

    private static Stream<RuleCase> contradicting() {
        return Stream.of(
                RuleCase.of("sets/three-speeds", CARRIER, SUN, RING, carrier(THIRD))
                        .concludes(contradiction(HALF), CARRIER, SUN, RING, carrier(THIRD))
                        .alone()
                        .notWithInstead(carrier(THIRD), carrier(HALF)),
                RuleCase.of("sets/two-speeds", CARRIER, SUN, RING_STANDS, carrier(THIRD))
                        .concludes(contradiction(QUARTER), CARRIER, SUN, RING_STANDS, carrier(THIRD))
                        .alone()
                        .notWithInstead(carrier(THIRD), carrier(QUARTER)));
    }

    private static Fact contradiction(Fraction bySet) {
        return new Contradiction("3", INPUT, "carrier", bySet, THIRD);
    }

    private static Driven carrier(Fraction speed) {
        return new Driven("3", INPUT, "carrier", speed, "sun", "set");
    }

    private static Driven driven(String body, Fraction speed) {
        return new Driven("3", INPUT, body, speed, body, "");
    }
}
