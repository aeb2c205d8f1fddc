package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.teeth.SomeTeeth.forces;
import static org.layshaft.engine.teeth.SomeTeeth.helical;
import static org.layshaft.engine.teeth.SomeTeeth.internal;
import static org.layshaft.engine.teeth.SomeTeeth.spur;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.teeth.ToothForce.Radial;
import org.layshaft.engine.teeth.ToothForce.Tangential;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

/** Which way the parts of a tooth force point. */
class DirectionsTest {

    /** F-08: expertsmind.com, force analysis in helical gears, direction of the components. */
    @Test
    void f08RadialToItsOwnCentreTangentialAgainstTheDriver() {
        PairForces forces = external(Hand.RIGHT, Turn.CLOCKWISE);
        assertEquals(Tangential.AGAINST_ROTATION, forces.onDriver().tangential());
        assertEquals(Tangential.WITH_ROTATION, forces.onDriven().tangential());
        assertEquals(Radial.TOWARD_OWN_CENTRE, forces.onDriver().radial());
        assertEquals(Radial.TOWARD_OWN_CENTRE, forces.onDriven().radial());
        assertEquals(Turn.ANTICLOCKWISE, forces.onDriven().turns());
    }

    /**
     * F-08 and F-09, the thrust rule: right hand for a right-hand driver, left for left, fingers along the turning, the
     * thumb gives the thrust on the driver. What turns clockwise as seen from the front has the right thumb to the rear.
     */
    @ParameterizedTest
    @CsvSource({
        "RIGHT, CLOCKWISE, REAR",
        "RIGHT, ANTICLOCKWISE, FRONT",
        "LEFT, CLOCKWISE, FRONT",
        "LEFT, ANTICLOCKWISE, REAR"
    })
    void f09TheThumbGivesTheThrustOnTheDriver(Hand hand, Turn turns, Side thumb) {
        PairForces forces = external(hand, turns);
        assertEquals(Optional.of(thumb), forces.onDriver().axial());
        assertEquals(Optional.of(thumb.opposite()), forces.onDriven().axial());
        assertEquals(forces.onDriver().axialN(), forces.onDriven().axialN());
    }

    /** F-09: drive and coast. On the overrun the gear that was driven drives, and both turn as they did. */
    @Test
    void f09TheOverrunReversesTheThrust() {
        PairForces drive = external(Hand.RIGHT, Turn.CLOCKWISE);
        PairForces coast = forces(new LoadedPair(
                helical("gear", 50, Hand.LEFT), helical("pinion", 25, Hand.RIGHT), 100, Turn.ANTICLOCKWISE));
        assertEquals(Optional.of(Side.REAR), drive.onDriver().axial());
        assertEquals(Optional.of(Side.FRONT), coast.onDriven().axial());
        assertEquals(drive.onDriver().turns(), coast.onDriven().turns());
    }

    @Test
    void aSpurPairHasNoThrust() {
        PairForces forces = forces(new LoadedPair(spur("pinion", 20, 3), spur("gear", 40, 3), 100, Turn.CLOCKWISE));
        assertEquals(Optional.empty(), forces.onDriver().axial());
        assertEquals(0, forces.onDriven().axialN());
    }

    /** The teeth press the internal gear outward, away from its centre, and it turns as its pinion does. */
    @ParameterizedTest
    @CsvSource({"RIGHT, CLOCKWISE, REAR", "LEFT, CLOCKWISE, FRONT", "RIGHT, ANTICLOCKWISE, FRONT"})
    void internalGears(Hand hand, Turn turns, Side thumb) {
        PairForces forces = forces(new LoadedPair(helical("sun", 25, hand), internal("ring", 75, hand), 100, turns));
        assertEquals(turns, forces.onDriven().turns());
        assertEquals(Optional.of(thumb), forces.onDriver().axial());
        assertEquals(Optional.of(thumb.opposite()), forces.onDriven().axial());
        assertEquals(Radial.TOWARD_OWN_CENTRE, forces.onDriver().radial());
        assertEquals(Radial.AWAY_FROM_OWN_CENTRE, forces.onDriven().radial());
        assertEquals(forces.onDriver().radialN(), forces.onDriven().radialN());
    }

    /** F-11: a driven and a driving gear of one hand on one shaft oppose each other; those of unlike hands add up. */
    @Test
    void f11OneHandOnALayshaftOpposes() {
        ToothForce driven = external(Hand.LEFT, Turn.CLOCKWISE).onDriven();
        ToothForce alike = forces(new LoadedPair(
                        helical("second", 30, Hand.RIGHT), helical("mate", 45, Hand.LEFT), 200, driven.turns()))
                .onDriver();
        assertEquals(Optional.of(driven.axial().orElseThrow().opposite()), alike.axial());
        ToothForce unlike = forces(new LoadedPair(
                        helical("second", 30, Hand.LEFT), helical("mate", 45, Hand.RIGHT), 200, driven.turns()))
                .onDriver();
        assertEquals(driven.axial(), unlike.axial());
        assertEquals(
                Optional.of(driven.axial().orElseThrow()),
                Thrust.of(List.of(driven, unlike)).toward());
    }

    /** F-11: they cancel exactly when tan(helix 1)/tan(helix 2) = r1/r2. */
    @Test
    void f11ThrustsCancelWhenTangentsAreAsRadii() {
        double radius1 = 4 * 50 / Math.cos(Math.toRadians(20)) / 2;
        double helix2 = 12;
        double radius2 = radius1 * Math.tan(Math.toRadians(helix2)) / Math.tan(Math.toRadians(20));
        double module2 = 2 * radius2 * Math.cos(Math.toRadians(helix2)) / 30;
        PairForces first = external(Hand.LEFT, Turn.CLOCKWISE);
        ToothForce driving = forces(new LoadedPair(
                        Toothing.external("second", 30, module2, helix2, Optional.of(Hand.RIGHT), 20),
                        Toothing.external("mate", 45, module2, helix2, Optional.of(Hand.LEFT), 20),
                        200,
                        Turn.ANTICLOCKWISE))
                .onDriver();
        assertEquals(radius2, driving.atRadiusMm(), 1e-9);
        assertEquals(new Thrust(0, Optional.empty()), Thrust.of(List.of(first.onDriven(), driving)));
    }

    /** 100 N·m on 25 teeth, so 200 N·m on 50. */
    private static PairForces external(Hand hand, Turn turns) {
        return forces(new LoadedPair(helical("pinion", 25, hand), helical("gear", 50, hand.opposite()), 100, turns));
    }
}
