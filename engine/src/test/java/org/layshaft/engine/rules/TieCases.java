package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Mechanism.Stands;
import org.layshaft.engine.rules.fact.Ties.CouplesTo;
import org.layshaft.engine.rules.fact.Ties.FixedOn;
import org.layshaft.engine.rules.fact.Ties.HalfShaftJoins;
import org.layshaft.engine.rules.fact.Ties.InMesh;
import org.layshaft.engine.rules.fact.Ties.MeshedBySliding;
import org.layshaft.engine.rules.fact.Ties.SeizedOn;
import org.layshaft.engine.rules.fact.Ties.Splits;
import org.layshaft.engine.rules.fact.Ties.Tie;
import org.layshaft.engine.rules.fact.Ties.TieAt;

/** What is tied to what: each tie holds both ways. */
final class TieCases {
    private static final InMesh MESH = new InMesh("mesh", "driver-gear", "third", 20, 30);
    private static final FixedOn FIXED = new FixedOn("seat", "driver-gear", "input");
    private static final SeizedOn SEIZED = new SeizedOn("seized", "third", "output", FAULT);
    private static final HalfShaftJoins JOINS = new HalfShaftJoins("joins", "left-half-shaft", "left-wheel");
    private static final Stands STANDS = new Stands("3", "3-4-sleeve", REAR);
    private static final CouplesTo COUPLES = new CouplesTo("couple", "3-4-sleeve", REAR, "third");
    private static final Stands SLID = new Stands("R", "idler", REAR);
    private static final MeshedBySliding SLIDES =
            new MeshedBySliding("slid", "idler", REAR, "idler", "reverse", 21, 35);

    private TieCases() {}

    static Stream<RuleCase> all() {
        return Stream.of(
                RuleCase.of("ties/mesh", MESH)
                        .concludes(new Tie("mesh", "driver-gear", "third", Fraction.of(-2, 3)), MESH)
                        .alone()
                        .notWithInstead(MESH, SLIDES),
                RuleCase.of("ties/mesh", MESH)
                        .concludes(new Tie("mesh", "third", "driver-gear", Fraction.of(-3, 2)), MESH)
                        .alone()
                        .notWithout(MESH),
                RuleCase.of("ties/fixed", FIXED)
                        .concludes(new Tie("seat", "driver-gear", "input", Fraction.ONE), FIXED)
                        .alone()
                        .notWithInstead(FIXED, COUPLES),
                RuleCase.of("ties/fixed", FIXED)
                        .concludes(new Tie("seat", "input", "driver-gear", Fraction.ONE), FIXED)
                        .alone()
                        .notWithout(FIXED),
                RuleCase.of("ties/seized", SEIZED)
                        .concludes(new Tie("seized", "third", "output", Fraction.ONE), SEIZED)
                        .alone()
                        .notWithInstead(SEIZED, COUPLES),
                RuleCase.of("ties/seized", SEIZED)
                        .concludes(new Tie("seized", "output", "third", Fraction.ONE), SEIZED)
                        .alone()
                        .notWithInstead(SEIZED, FAULT),
                RuleCase.of("ties/half-shaft", JOINS)
                        .concludes(new Tie("joins", "left-half-shaft", "left-wheel", Fraction.ONE), JOINS)
                        .alone()
                        .notWithInstead(JOINS, new Splits("splits", "case", "left-half-shaft", "right-half-shaft")),
                RuleCase.of("ties/half-shaft", JOINS)
                        .concludes(new Tie("joins", "left-wheel", "left-half-shaft", Fraction.ONE), JOINS)
                        .alone()
                        .notWithout(JOINS),
                RuleCase.of("ties/sleeve", STANDS, COUPLES)
                        .concludes(new TieAt("3", "couple", "3-4-sleeve", "third", Fraction.ONE), STANDS, COUPLES)
                        .alone()
                        .notWithInstead(STANDS, new Stands("3", "3-4-sleeve", FRONT)),
                RuleCase.of("ties/sleeve", STANDS, COUPLES)
                        .concludes(new TieAt("3", "couple", "third", "3-4-sleeve", Fraction.ONE), STANDS, COUPLES)
                        .alone()
                        .notWithInstead(STANDS, new Stands("3", "1-2-sleeve", REAR)),
                RuleCase.of("ties/slid-into-mesh", SLID, SLIDES)
                        .concludes(new TieAt("R", "slid", "idler", "reverse", Fraction.of(-3, 5)), SLID, SLIDES)
                        .alone()
                        .notWithInstead(SLID, new Stands("R", "idler", FRONT)),
                RuleCase.of("ties/slid-into-mesh", SLID, SLIDES)
                        .concludes(new TieAt("R", "slid", "reverse", "idler", Fraction.of(-5, 3)), SLID, SLIDES)
                        .alone()
                        .notWithInstead(SLID, new Stands("R", "other-idler", REAR)));
    }
}
