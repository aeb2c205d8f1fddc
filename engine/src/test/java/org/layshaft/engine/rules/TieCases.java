package org.layshaft.engine.rules;

import static org.layshaft.engine.rules.RuleCases.FAULT;
import static org.layshaft.kb.layout.Side.FRONT;
import static org.layshaft.kb.layout.Side.REAR;

import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Mechanism.Stands;
import org.layshaft.engine.rules.fact.Ties.ClutchJoins;
import org.layshaft.engine.rules.fact.Ties.CouplesTo;
import org.layshaft.engine.rules.fact.Ties.FixedOn;
import org.layshaft.engine.rules.fact.Ties.HalfShaftJoins;
import org.layshaft.engine.rules.fact.Ties.InMesh;
import org.layshaft.engine.rules.fact.Ties.MeshedBySliding;
import org.layshaft.engine.rules.fact.Ties.SeizedOn;
import org.layshaft.engine.rules.fact.Ties.SidesTied;
import org.layshaft.engine.rules.fact.Ties.StuckTogether;
import org.layshaft.engine.rules.fact.Ties.Tie;
import org.layshaft.engine.rules.fact.Ties.TieAt;
import org.layshaft.kb.layout.MeshKind;

/** What is tied to what: each tie holds both ways. */
final class TieCases {
    private static final InMesh MESH = new InMesh("mesh", "driver-gear", "third", 20, 30, MeshKind.EXTERNAL);
    private static final InMesh INSIDE = new InMesh("mesh", "planet", "ring", 20, 60, MeshKind.INTERNAL);
    private static final InMesh CHAINED = new InMesh("mesh", "upper", "lower", 30, 45, MeshKind.CHAIN);
    private static final InMesh CROWN = new InMesh("mesh", "pinion", "crown", 10, 40, MeshKind.BEVEL);
    private static final InMesh CROWN_OPPOSITE = new InMesh("mesh", "pinion", "crown", 10, 40, MeshKind.BEVEL_OPPOSITE);
    private static final ClutchJoins CLOSES = new ClutchJoins("clutch odd", "odd-clutch", "drum", "inner-input");
    private static final Stands CLOSED = new Stands("3", "odd-clutch", FRONT);
    private static final FixedOn FIXED = new FixedOn("seat", "driver-gear", "input");
    private static final SeizedOn SEIZED = new SeizedOn("seized", "third", "output", FAULT);
    private static final HalfShaftJoins JOINS = new HalfShaftJoins("joins", "left-half-shaft", "left-wheel");
    private static final Stands STANDS = new Stands("3", "3-4-sleeve", REAR);
    private static final CouplesTo COUPLES = new CouplesTo("couple", "3-4-sleeve", REAR, "third");
    private static final Stands SLID = new Stands("R", "idler", REAR);
    private static final MeshedBySliding SLIDES =
            new MeshedBySliding("slid", "idler", REAR, "idler", "reverse", 21, 35);

    private static final StuckTogether STUCK =
            new StuckTogether("seat pilot-bearing", "output", "input", "pilot-bearing", FAULT);

    private static final SidesTied TIED = new SidesTied("tied", "differential", "left", "right", FAULT);

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
                RuleCase.of("ties/internal", INSIDE)
                        .concludes(new Tie("mesh", "planet", "ring", Fraction.of(1, 3)), INSIDE)
                        .alone()
                        .notWithInstead(INSIDE, MESH, "ties/mesh"),
                RuleCase.of("ties/internal", INSIDE)
                        .concludes(new Tie("mesh", "ring", "planet", Fraction.of(3)), INSIDE)
                        .alone()
                        .notWithout(INSIDE),
                RuleCase.of("ties/chain", CHAINED)
                        .concludes(new Tie("mesh", "upper", "lower", Fraction.of(2, 3)), CHAINED)
                        .alone()
                        .notWithInstead(CHAINED, MESH, "ties/mesh"),
                RuleCase.of("ties/chain", CHAINED)
                        .concludes(new Tie("mesh", "lower", "upper", Fraction.of(3, 2)), CHAINED)
                        .alone()
                        .notWithInstead(CHAINED, INSIDE, "ties/internal"),
                RuleCase.of("ties/bevel", CROWN)
                        .concludes(new Tie("mesh", "pinion", "crown", Fraction.of(1, 4)), CROWN)
                        .alone()
                        .notWithInstead(CROWN, CROWN_OPPOSITE, "ties/bevel"),
                RuleCase.of("ties/bevel", CROWN_OPPOSITE)
                        .concludes(new Tie("mesh", "crown", "pinion", Fraction.of(-4)), CROWN_OPPOSITE)
                        .alone()
                        .notWithInstead(CROWN_OPPOSITE, MESH, "ties/mesh"),
                RuleCase.of("ties/clutch", CLOSED, CLOSES)
                        .concludes(new TieAt("3", "clutch odd", "drum", "inner-input", Fraction.ONE), CLOSED, CLOSES)
                        .alone()
                        .notWithInstead(CLOSED, new Stands("3", "even-clutch", FRONT)),
                RuleCase.of("ties/clutch", CLOSED, CLOSES)
                        .concludes(new TieAt("3", "clutch odd", "inner-input", "drum", Fraction.ONE), CLOSED, CLOSES)
                        .alone()
                        .notWithout(CLOSED),
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
                RuleCase.of("ties/stuck-together", STUCK)
                        .concludes(new Tie("seat pilot-bearing", "output", "input", Fraction.ONE), STUCK)
                        .alone()
                        .notWithInstead(STUCK, FAULT),
                RuleCase.of("ties/stuck-together", STUCK)
                        .concludes(new Tie("seat pilot-bearing", "input", "output", Fraction.ONE), STUCK)
                        .alone()
                        .notWithout(STUCK),
                RuleCase.of("ties/sides", TIED)
                        .concludes(new Tie("tied", "left", "right", Fraction.ONE), TIED)
                        .alone()
                        .notWithInstead(TIED, FAULT),
                RuleCase.of("ties/sides", TIED)
                        .concludes(new Tie("tied", "right", "left", Fraction.ONE), TIED)
                        .alone()
                        .notWithout(TIED),
                RuleCase.of("ties/half-shaft", JOINS)
                        .concludes(new Tie("joins", "left-half-shaft", "left-wheel", Fraction.ONE), JOINS)
                        .alone()
                        .notWithInstead(JOINS, FAULT),
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
