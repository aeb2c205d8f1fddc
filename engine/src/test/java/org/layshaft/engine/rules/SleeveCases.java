package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Faulty.CannotReach;
import org.layshaft.engine.rules.fact.Faulty.LeftAt;
import org.layshaft.engine.rules.fact.Faulty.SpeedsNotMatched;
import org.layshaft.engine.rules.fact.Faulty.StuckAt;
import org.layshaft.engine.rules.fact.Mechanism.CanMeet;
import org.layshaft.engine.rules.fact.Mechanism.Closing;
import org.layshaft.engine.rules.fact.Mechanism.ForkMoves;
import org.layshaft.engine.rules.fact.Mechanism.KeptApart;
import org.layshaft.engine.rules.fact.Mechanism.Pair;
import org.layshaft.engine.rules.fact.Mechanism.RailShut;
import org.layshaft.engine.rules.fact.Mechanism.Selecting;
import org.layshaft.engine.rules.fact.Mechanism.Stands;
import org.layshaft.engine.rules.fact.Mechanism.StaysEngaged;
import org.layshaft.engine.rules.fact.Mechanism.Target;
import org.layshaft.engine.rules.fact.Verdicts.SoundGear;
import org.layshaft.engine.rules.fact.Verdicts.Takes;
import org.layshaft.engine.rules.fact.Verdicts.WithoutRing;

/** Where sleeves and sliding gears stand. */
final class SleeveCases {
    private static final Selecting THIRD = new Selecting("3", "3-4-rail", REAR);
    private static final ForkMoves MOVES = new ForkMoves("3-4-rail", "3-4-fork", "3-4-sleeve", REAR);
    private static final StuckAt STUCK = new StuckAt("3-4-sleeve", FRONT, FAULT);
    private static final LeftAt LEFT = new LeftAt("3-4-sleeve", FRONT, FAULT);
    private static final Target TARGET = new Target("1");
    private static final Pair PAIR = new Pair("1+3", "1", "3", "1-2-rail", "3-4-rail");
    private static final SoundGear FIRST_GEAR = new SoundGear("1", "1-2-rail", "1-2-sleeve", REAR, Fraction.of(1, 5));
    private static final SoundGear THIRD_GEAR = new SoundGear("3", "3-4-rail", "3-4-sleeve", REAR, Fraction.of(1, 2));
    private static final Stands IN_FIRST = new Stands("1+3", "1-2-sleeve", REAR);
    private static final Stands IN_THIRD = new Stands("1+3", "3-4-sleeve", REAR);
    private static final Stands FIRST_SELECTED = new Stands("1", "1-2-sleeve", REAR);
    private static final Stands THIRD_STAYS = new Stands("1", "3-4-sleeve", REAR);

    private static final SpeedsNotMatched UNMATCHED = new SpeedsNotMatched("3-4-sleeve", REAR, FAULT);
    private static final Takes TAKES = new Takes("3", "3-4-rail", "3-4-sleeve", REAR);
    private static final Closing CLOSING = new Closing("3", "odd-clutch");

    private SleeveCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(
                RuleCase.of("sleeves/taken-along", THIRD, MOVES)
                        .concludes(new Stands("3", "3-4-sleeve", REAR), THIRD, MOVES)
                        .alone()
                        .notWith(new RailShut("3", "3-4-rail", FAULT))
                        .notWith(new StuckAt("3-4-sleeve", null, FAULT), "rails/held", "rails/held-is-shut")
                        .notWith(new LeftAt("3-4-sleeve", null, FAULT))
                        .notWith(new CannotReach("3-4-sleeve", REAR, FAULT))
                        .notWithInstead(MOVES, new ForkMoves("3-4-rail", "3-4-fork", "3-4-sleeve", FRONT)),
                RuleCase.of("sleeves/clutch-closed", CLOSING)
                        .concludes(new Stands("3", "odd-clutch", FRONT), CLOSING)
                        .alone()
                        .notWithInstead(CLOSING, THIRD),
                RuleCase.of("sleeves/stuck", STUCK, TARGET)
                        .concludes(new Stands("1", "3-4-sleeve", FRONT), STUCK, TARGET)
                        .alone()
                        .notWithInstead(STUCK, new StuckAt("3-4-sleeve", null, FAULT)),
                RuleCase.of("sleeves/left", LEFT, TARGET)
                        .concludes(new Stands("1", "3-4-sleeve", FRONT), LEFT, TARGET)
                        .alone()
                        .notWithInstead(LEFT, new LeftAt("3-4-sleeve", null, FAULT)),
                RuleCase.of("sleeves/without-ring", UNMATCHED, TAKES)
                        .concludes(new WithoutRing("3"), UNMATCHED, TAKES)
                        .alone()
                        .notWithInstead(UNMATCHED, new SpeedsNotMatched("3-4-sleeve", FRONT, FAULT))
                        .notWithInstead(UNMATCHED, new SpeedsNotMatched("1-2-sleeve", REAR, FAULT)),
                RuleCase.of("sleeves/can-meet", PAIR, FIRST_GEAR, IN_FIRST, THIRD_GEAR, IN_THIRD)
                        .concludes(new CanMeet("1+3"), PAIR, FIRST_GEAR, IN_FIRST, THIRD_GEAR, IN_THIRD)
                        .besides("verdict/not-driven")
                        .notWith(new KeptApart("1-2-rail", "3-4-rail"), "verdict/not-driven")
                        .notWithInstead(IN_THIRD, new Stands("1+3", "3-4-sleeve", FRONT), "verdict/not-driven"),
                RuleCase.of("sleeves/stays-engaged", FIRST_GEAR, FIRST_SELECTED, THIRD_GEAR, THIRD_STAYS)
                        .concludes(new StaysEngaged("3", "1"), FIRST_GEAR, FIRST_SELECTED, THIRD_GEAR, THIRD_STAYS)
                        .besides("verdict/not-driven")
                        .notWithInstead(THIRD_STAYS, new Stands("1", "3-4-sleeve", FRONT), "verdict/not-driven")
                        .notWithInstead(THIRD_STAYS, new Stands("3", "3-4-sleeve", REAR), "verdict/not-driven")
                        .notWithout(FIRST_SELECTED, "verdict/not-driven"));
    }
}
