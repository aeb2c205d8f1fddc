package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Faulty.PieceGone;
import org.layshaft.engine.rules.fact.Faulty.RailNotFound;
import org.layshaft.engine.rules.fact.Faulty.StuckAt;
import org.layshaft.engine.rules.fact.Mechanism.Between;
import org.layshaft.engine.rules.fact.Mechanism.ForkMoves;
import org.layshaft.engine.rules.fact.Mechanism.KeptApart;
import org.layshaft.engine.rules.fact.Mechanism.LetGo;
import org.layshaft.engine.rules.fact.Mechanism.RailHeld;
import org.layshaft.engine.rules.fact.Mechanism.RailShut;
import org.layshaft.engine.rules.fact.Mechanism.Selecting;

/** Which rails can move. */
final class RailCases {
    private static final Between BETWEEN = new Between("1-2-rail", "3-4-rail", List.of("plunger", "pin"));
    private static final PieceGone PIN_GONE = new PieceGone("pin", FAULT);
    private static final StuckAt STUCK = new StuckAt("3-4-sleeve", FRONT, FAULT);
    private static final ForkMoves MOVES = new ForkMoves("3-4-rail", "3-4-fork", "3-4-sleeve", FRONT);
    private static final RailHeld HELD = new RailHeld("3-4-rail", FRONT, FAULT);
    private static final RailHeld HELD_IN_NEUTRAL = new RailHeld("3-4-rail", null, FAULT);
    private static final KeptApart APART = new KeptApart("3-4-rail", "1-2-rail");
    private static final Selecting THIRD = new Selecting("3", "3-4-rail", REAR);
    private static final Selecting FIRST = new Selecting("1", "1-2-rail", FRONT);

    private static final RailNotFound LOST = new RailNotFound("1-2-rail", FAULT);

    private RailCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(
                RuleCase.of("rails/kept-apart", BETWEEN)
                        .concludes(new KeptApart("1-2-rail", "3-4-rail"), BETWEEN)
                        .alone()
                        .notWith(new PieceGone("pin", FAULT), "rails/let-go"),
                RuleCase.of("rails/kept-apart", BETWEEN)
                        .concludes(new KeptApart("3-4-rail", "1-2-rail"), BETWEEN)
                        .alone()
                        .notWith(new PieceGone("plunger", FAULT), "rails/let-go"),
                RuleCase.of("rails/let-go", BETWEEN, PIN_GONE)
                        .concludes(new LetGo("1-2-rail", "3-4-rail", FAULT), BETWEEN, PIN_GONE)
                        .alone()
                        .notWithInstead(PIN_GONE, new PieceGone("other plunger", FAULT), "rails/kept-apart"),
                RuleCase.of("rails/let-go", BETWEEN, PIN_GONE)
                        .concludes(new LetGo("3-4-rail", "1-2-rail", FAULT), BETWEEN, PIN_GONE)
                        .alone()
                        .notWithout(PIN_GONE, "rails/kept-apart"),
                RuleCase.of("rails/held", STUCK, MOVES)
                        .concludes(new RailHeld("3-4-rail", FRONT, FAULT), STUCK, MOVES)
                        .alone()
                        .notWithInstead(MOVES, new ForkMoves("3-4-rail", "3-4-fork", "other-sleeve", FRONT)),
                RuleCase.of("rails/held-is-shut", HELD, THIRD)
                        .concludes(new RailShut("3", "3-4-rail", FAULT), HELD, THIRD)
                        .alone()
                        .notWithInstead(THIRD, new Selecting("4", "3-4-rail", FRONT))
                        .notWithInstead(THIRD, FIRST),
                RuleCase.of("rails/held-is-shut", HELD_IN_NEUTRAL, THIRD)
                        .concludes(new RailShut("3", "3-4-rail", FAULT), HELD_IN_NEUTRAL, THIRD)
                        .alone()
                        .notWithInstead(HELD_IN_NEUTRAL, new RailHeld("3-4-rail", REAR, FAULT)),
                RuleCase.of("rails/not-found", LOST, FIRST)
                        .concludes(new RailShut("1", "1-2-rail", FAULT), LOST, FIRST)
                        .alone()
                        .notWithInstead(FIRST, THIRD),
                RuleCase.of("rails/shut-by-interlock", HELD, APART, FIRST)
                        .concludes(new RailShut("1", "1-2-rail", FAULT), HELD, APART, FIRST)
                        .alone()
                        .notWithInstead(HELD, HELD_IN_NEUTRAL)
                        .notWithInstead(APART, new KeptApart("1-2-rail", "3-4-rail"))
                        .notWithInstead(FIRST, new Selecting("5", "5-R-rail", FRONT)));
    }
}
