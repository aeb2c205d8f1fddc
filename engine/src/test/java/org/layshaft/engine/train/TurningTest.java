package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Speed.FixedBy;
import org.layshaft.kb.layout.Side;

class TurningTest {
    private static final Train NEUTRAL = curlew(Stance.NEUTRAL);
    private static final Train THIRD = curlew(Stance.NEUTRAL.with("3-4-sleeve", Side.REAR));
    private static final Train SECOND = curlew(Stance.NEUTRAL.with("1-2-sleeve", Side.FRONT));

    @Test
    void standingInNeutralTheEngineTurnsTheGearsAndNothingTurnsTheOutput() {
        Turning turning = Turning.of(NEUTRAL, Condition.STANDING);
        assertEquals(FixedBy.ENGINE, turning.speedOf("third").fixedBy());
        assertEquals(FixedBy.STANDS, turning.speedOf("output").fixedBy());
        assertEquals(turning.speedOf("third"), turning.difference("third", "output"));
        assertTrue(turning.engineCanTurn());
    }

    @Test
    void rollingInNeutralEachEndTurnsItsOwn() {
        Turning turning = Turning.of(NEUTRAL, Condition.ROLLING);
        assertEquals(FixedBy.ROAD, turning.speedOf("3-4-sleeve").fixedBy());
        assertEquals(FixedBy.BOTH, turning.difference("3-4-sleeve", "third").fixedBy());
        assertEquals(Optional.empty(), turning.loads());
    }

    /** In gear, standing, the clutch engaged: the engine cannot turn. With the clutch released it can. */
    @Test
    void inGearTheStandingVehicleHoldsTheEngine() {
        assertFalse(Turning.of(THIRD, Condition.STANDING).engineCanTurn());
        Turning released = Turning.of(THIRD, Condition.STANDING.withClutchReleased());
        assertTrue(released.engineCanTurn());
        assertEquals(FixedBy.STANDS, released.speedOf("input").fixedBy());
    }

    @Test
    void withTheClutchReleasedNothingFixesTheCountershaftInNeutral() {
        Speed countershaft =
                Turning.of(NEUTRAL, Condition.STANDING.withClutchReleased()).speedOf("countershaft");
        assertEquals(FixedBy.NOTHING, countershaft.fixedBy());
        assertThrows(IllegalStateException.class, () -> countershaft.at(Fraction.ONE, Fraction.ONE));
    }

    @Test
    void withTheClutchReleasedTheRoadTurnsTheInputThroughTheGear() {
        Speed input = Turning.of(THIRD, Condition.ROLLING.withClutchReleased()).speedOf("input");
        assertEquals(FixedBy.ROAD, input.fixedBy());
        assertEquals(TrainSolver.solve(THIRD).ratio().orElseThrow(), input.ofRoad());
    }

    @Test
    void onTheOverrunTheMeshIsDrivenFromTheOtherSide() {
        Power drive = Turning.of(THIRD, Condition.ROLLING).loads().orElseThrow();
        Power overrun =
                Turning.of(THIRD, Condition.ROLLING.onTheOverrun()).loads().orElseThrow();
        String mesh = "mesh input-gear/cluster-driven";
        assertTrue(drive.through(mesh).orElseThrow().taken().containsKey("input-gear"));
        assertTrue(overrun.through(mesh).orElseThrow().taken().containsKey("cluster-driven"));
    }

    /** Out of second into third at 1000 rpm of the output: the ring must slow the input from one ratio to the other. */
    @Test
    void aShiftUpSlowsTheInput() {
        Shift shift = Shift.of(SECOND, NEUTRAL, "3-4-sleeve", "third").orElseThrow();
        Fraction second = Fraction.of(47 * 43, 24 * 28);
        Fraction third = Fraction.of(47 * 34, 24 * 37);
        assertEquals(second, shift.inputBefore());
        assertEquals(third, shift.inputAfter());
        assertEquals(Fraction.ONE.minus(second.over(third)), shift.difference(), "the sleeve is the slower");
    }

    @Test
    void inABendTheOuterWheelTurnsMore() {
        Turning bend = Turning.of(axle(false), bend());
        assertEquals(Fraction.of(-11, 50), bend.speedOf("right-wheel").ofEngine());
        assertEquals(Fraction.of(-1, 5), bend.speedOf("case").ofEngine());
        assertEquals(Fraction.of(-9, 50), bend.speedOf("left-wheel").ofEngine());
        assertTrue(bend.wheelsCanRoll());
    }

    /** Tied wheels cannot roll round a bend: one has to slip, or the driveline winds up. */
    @Test
    void aLockedAxleCannotRollRoundABend() {
        assertFalse(Turning.of(axle(true), bend()).wheelsCanRoll());
        assertTrue(Turning.of(axle(true), Condition.ROLLING).wheelsCanRoll());
    }

    /** Locked, how the wheels share is not told; it is taken to be equal, and said so. */
    @Test
    void theShareOfALockedAxleIsAssumedEqual() {
        Balance.Torques locked = Statics.of(axle(true)).torques().orElseThrow();
        assertTrue(locked.shareIsAssumed());
        assertEquals(locked.forces().get("road left-wheel"), locked.forces().get("road right-wheel"));
        assertFalse(Statics.of(axle(false)).torques().orElseThrow().shareIsAssumed());
    }

    private static Condition bend() {
        return Condition.ROLLING.turning("left-wheel", "right-wheel", Fraction.of(1, 5));
    }

    private static Train axle(boolean locked) {
        TrainSketch sketch = new TrainSketch()
                .mesh("pinion", 12, "crown", 60)
                .on("case", "crown")
                .split("case", "left", "right")
                .joined("left", "left-wheel")
                .joined("right", "right-wheel")
                .rolling("left-wheel", "right-wheel");
        return (locked ? sketch.coupled("left", Side.FRONT, "case") : sketch).from("pinion", Train.ROAD);
    }

    private static Train curlew(Stance stance) {
        return new TrainBuilder(Boxes.the("curlew"), Changes.NONE).at(stance);
    }
}
