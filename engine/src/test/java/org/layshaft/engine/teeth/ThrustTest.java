package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.teeth.SomeTeeth.forces;
import static org.layshaft.engine.teeth.SomeTeeth.helical;
import static org.layshaft.engine.teeth.SomeTeeth.spur;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

class ThrustTest {
    private final ThrustBearing front = new ThrustBearing("the front bearing", Optional.of(Set.of(Side.FRONT)));
    private final ThrustBearing rear = new ThrustBearing("the rear bearing", Optional.of(Set.of(Side.REAR)));
    private final ThrustBearing ball =
            new ThrustBearing("the ball bearing", Optional.of(Set.of(Side.FRONT, Side.REAR)));
    private final ThrustBearing rollers = new ThrustBearing("the roller bearing", Optional.of(Set.of()));
    private final ThrustBearing unknown = new ThrustBearing("the odd bearing", Optional.empty());
    private final Thrust rearward = Thrust.of(List.of(forces(new LoadedPair(
                    helical("pinion", 25, Hand.RIGHT), helical("gear", 50, Hand.LEFT), 100, Turn.CLOCKWISE))
            .onDriver()));

    /** 100 N·m on a radius of 53.2 mm, times the tangent of 20 degrees: 2000/(4 × 25) × sin 20. */
    @Test
    void theThrustOfOneGear() {
        assertEquals(Optional.of(Side.REAR), rearward.toward());
        assertEquals(2000 * Math.sin(Math.toRadians(20)), rearward.newtons(), 1e-9);
    }

    @Test
    void theBearingThatHoldsThatWayTakesIt() {
        assertEquals(seat(new ThrustSeat.OneBearing("the rear bearing")), rearward.takenBy(List.of(front, rear)));
        assertEquals(seat(new ThrustSeat.OneBearing("the ball bearing")), rearward.takenBy(List.of(ball, rollers)));
    }

    @Test
    void whereNoneCanThatIsSaid() {
        assertEquals(seat(new ThrustSeat.NoBearing()), rearward.takenBy(List.of(front, rollers)));
        assertEquals(seat(new ThrustSeat.NoBearing()), rearward.takenBy(List.of()));
    }

    @Test
    void whereSeveralCouldItIsNotGuessed() {
        assertEquals(
                seat(new ThrustSeat.OneOf(List.of("the rear bearing", "the ball bearing"))),
                rearward.takenBy(List.of(front, rear, ball)));
    }

    @Test
    void aBearingOfWhichNothingIsToldLeavesItOpen() {
        assertEquals(
                Optional.of("cannot be told, which way the odd bearing takes thrust is missing"),
                rearward.takenBy(List.of(rear, unknown)).whyNot());
    }

    @Test
    void spurGearsAskNothingOfAnyBearing() {
        Thrust none = Thrust.of(
                List.of(forces(new LoadedPair(spur("pinion", 20, 3), spur("gear", 40, 3), 100, Turn.CLOCKWISE))
                        .onDriver()));
        assertEquals(seat(new ThrustSeat.NothingToTake()), none.takenBy(List.of(unknown)));
    }

    private static Telling<ThrustSeat> seat(ThrustSeat seat) {
        return Telling.told(seat);
    }
}
