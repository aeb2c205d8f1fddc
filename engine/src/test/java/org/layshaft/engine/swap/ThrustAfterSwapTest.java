package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.Thrust;
import org.layshaft.engine.teeth.ThrustSeat;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** Thrusts of Pratincole, a left-hand input gear of 25 driving 46, first gear 20 to 51. */
class ThrustAfterSwapTest {
    private static final Layout PRATINCOLE = Boxes.typed("teeth", "pratincole");
    /** Thrust in N of 100 N·m on one tooth-count: 2 T tan b/d with d = m z/cos b. */
    private static final double PER_TOOTH = 2 * 100_000 * Math.sin(Math.toRadians(22)) / 2.5;

    private static final double DRIVEN = PER_TOOTH / 25;
    private static final double ON_FIRST = PER_TOOTH * 46 / 25 / 20;

    /** Both thrusts on the countershaft went to the rear; that of a first gear of the other hand goes to the front. */
    @Test
    void anotherHandReversesTheShaftAndTheBearing() {
        GearComparison first = first(Change.NONE.with(Swaps.hand(PRATINCOLE.gear("cluster-first"), Hand.RIGHT)));
        ThrustComparison countershaft = thrust(first, "countershaft");
        assertThrust(DRIVEN + ON_FIRST, Side.REAR, countershaft.before());
        assertThrust(ON_FIRST - DRIVEN, Side.FRONT, countershaft.after());
        assertEquals(Telling.told(true), countershaft.reversed());
        assertEquals(
                List.of(
                        Telling.told(new ThrustSeat.OneBearing("countershaft rear bearing")),
                        Telling.told(new ThrustSeat.OneBearing("countershaft front bearing"))),
                List.of(countershaft.takenBefore(), countershaft.takenAfter()));
        ThrustComparison input = thrust(first, "input");
        assertEquals(Telling.told(false), input.reversed());
        assertThrust(DRIVEN, Side.FRONT, input.after());
    }

    @Test
    void aPairOfTwoModulesIsNotReckoned() {
        Change coarse = Change.NONE.with(Swaps.module(PRATINCOLE.gear("first"), 3));
        Comparison comparison = Comparison.of(PRATINCOLE, coarse, Swaps.HUNDRED_NM, Swaps.REASONER);
        GearComparison first = comparison.gear("1");
        String unlike =
                "first gear and cluster first gear cannot mesh: their modules are 3.0 and 2.5 mm. They must be equal.";
        assertEquals(
                List.of(unlike.replace("first gear and cluster first gear", "cluster first gear and first gear")
                        .replace("3.0 and 2.5", "2.5 and 3.0")
                        .replace("equal.", "equal")),
                thrust(first, "output").after().because());
        assertEquals(Telling.told(false), thrust(first, "input").reversed());
        assertEquals(
                Map.of("first/cluster-first", List.of(unlike)),
                comparison.pairs().stream()
                        .collect(Collectors.toMap(pair -> pair.mesh().id(), PairComparison::unlike)));
        assertEquals(Optional.of(Fraction.ONE), first.factor());
    }

    private static GearComparison first(Change change) {
        return Comparison.of(PRATINCOLE, change, Swaps.HUNDRED_NM, Swaps.REASONER)
                .gear("1");
    }

    private static ThrustComparison thrust(GearComparison gear, String shaft) {
        return gear.thrusts().stream()
                .filter(each -> each.shaft().equals(shaft))
                .findFirst()
                .orElseThrow();
    }

    private static void assertThrust(double newtons, Side toward, Telling<Thrust> told) {
        Thrust thrust = told.value().orElseThrow();
        assertEquals(Optional.of(toward), thrust.toward());
        assertEquals(newtons, thrust.newtons(), 1e-9 * newtons);
    }
}
