package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.teeth.SomeTeeth.bevel;
import static org.layshaft.engine.teeth.SomeTeeth.forces;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.teeth.ToothForce.Radial;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

class BevelPairTest {

    /** Action and reaction: with shafts at a right angle, the thrust on one gear is the radial force on the other. */
    @ParameterizedTest
    @CsvSource({"0, CLOCKWISE", "35, CLOCKWISE", "35, ANTICLOCKWISE"})
    void thrustOnOneIsRadialOnTheOther(double spiralDeg, Turn turns) {
        PairForces forces = pair(spiralDeg, Hand.LEFT, turns);
        double pinionAwayFromApex = -forces.onDriver().rearwardN();
        double gearAwayFromApex = forces.onDriven().rearwardN();
        assertEquals(
                pinionAwayFromApex,
                forces.onDriven().inwardN(),
                1e-9 * forces.onDriver().totalN());
        assertEquals(
                gearAwayFromApex,
                forces.onDriver().inwardN(),
                1e-9 * forces.onDriver().totalN());
        assertEquals(
                forces.onDriver().totalN(),
                forces.onDriven().totalN(),
                1e-9 * forces.onDriven().totalN());
    }

    /** Straight teeth press both gears away from the points of their cones, whichever way they turn. */
    @ParameterizedTest
    @CsvSource({"CLOCKWISE", "ANTICLOCKWISE"})
    void straightTeethPressTowardTheLargeEnds(Turn turns) {
        PairForces forces = pair(0, Hand.LEFT, turns);
        assertEquals(Optional.of(Side.FRONT), forces.onDriver().axial());
        assertEquals(Optional.of(Side.REAR), forces.onDriven().axial());
    }

    /** As final drives have it: of left hand, pushed out of mesh while it drives clockwise, drawn in the other way. */
    @Test
    void aSteepSpiralDrawsThePinionInOneWay() {
        assertEquals(
                Optional.of(Side.FRONT),
                pair(35, Hand.LEFT, Turn.CLOCKWISE).onDriver().axial());
        assertEquals(
                Optional.of(Side.REAR),
                pair(35, Hand.LEFT, Turn.ANTICLOCKWISE).onDriver().axial());
        assertEquals(
                Optional.of(Side.REAR),
                pair(35, Hand.RIGHT, Turn.CLOCKWISE).onDriver().axial());
    }

    @Test
    void aSpiralCanPullAGearAwayFromItsCentre() {
        assertEquals(
                Radial.AWAY_FROM_OWN_CENTRE,
                pair(35, Hand.RIGHT, Turn.CLOCKWISE).onDriven().radial());
    }

    /** The point of the pinion's cone lies to the rear, that of the gear's to the front of its own shaft. */
    private static PairForces pair(double spiralDeg, Hand hand, Turn turns) {
        boolean straight = spiralDeg == 0;
        return forces(new LoadedPair(
                bevel("pinion", 11, 5, spiralDeg, straight ? Optional.empty() : Optional.of(hand), 20, 25, Side.REAR),
                bevel("gear", 41, 5, spiralDeg, Optional.empty(), 20, 25, Side.FRONT),
                300,
                turns,
                OptionalDouble.of(90)));
    }
}
