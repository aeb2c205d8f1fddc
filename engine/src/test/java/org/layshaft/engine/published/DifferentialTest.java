package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSketch;
import org.layshaft.engine.train.TrainSolver;

/** Bevel differentials as printed elsewhere. */
class DifferentialTest {
    /**
     * E-30: Khurmi and Gupta, example 13.18, and B. K. Sarkar, Theory of Machines, example 4.16. A pinion of 12 teeth at
     * 1000 rpm drives a crown of 60; one wheel turns at 210 rpm, the other then at 190.
     */
    @Test
    void e30OneWheelTurnsAsMuchSlowerAsTheOtherTurnsFaster() {
        // the crown turns against the pinion here, so that the printed speeds are those with the pinion at -1000
        Map<String, Fraction> speeds = TrainSolver.speedsGiven(
                        axle().from("pinion", "case"),
                        Map.of("pinion", Fraction.of(-1000), "left-wheel", Fraction.of(210)))
                .orElseThrow();
        assertEquals(Fraction.of(200), speeds.get("case"));
        assertEquals(Fraction.of(190), speeds.get("right-wheel"));
    }

    /** E-32: Army TM 5-3805-258-24-1. Straight ahead the pinions stand still on the spider, and both wheels get alike. */
    @Test
    void e32StraightAheadNothingTurnsInsideTheCase() {
        Train train = axle().rolling("left-wheel", "right-wheel").from("pinion", Train.ROAD);
        Map<String, Fraction> speeds = TrainSolver.solve(train).speeds();
        assertEquals(speeds.get("case"), speeds.get("left"));
        assertEquals(speeds.get("case"), speeds.get("right"));
        assertSharedEqually(train);
    }

    /** E-32, the same manual: in a turn the outer wheel runs ahead, and torque stays equal. */
    @Test
    void e32InATurnTorqueStaysEqual() {
        Train turning = axle().from("pinion", "left-wheel");
        Map<String, Fraction> speeds = TrainSolver.speedsGiven(
                        turning, Map.of("case", Fraction.of(100), "left-wheel", Fraction.of(110)))
                .orElseThrow();
        assertEquals(Fraction.of(90), speeds.get("right-wheel"));
        assertEquals(Outcome.NEUTRAL, TrainSolver.solve(turning).outcome(), "no wheel alone follows the pinion");
        assertSharedEqually(axle().rolling("left-wheel", Fraction.of(11, 10))
                .rolling("right-wheel", Fraction.of(9, 10))
                .from("pinion", Train.ROAD));
    }

    /** E-32, the same manual: the wheel that turns easier limits both; with no grip at one there is none to be had. */
    @Test
    void e32AWheelWithoutGripLeavesTheOtherWithNothing() {
        Train train = axle().from("pinion", "left-wheel");
        Balance.Slips slips = assertInstanceOf(Balance.Slips.class, Statics.of(train));
        Fraction crown = slips.motion().get("case");
        assertEquals(Fraction.of(-1, 5), crown);
        assertEquals(Fraction.ZERO, slips.motion().get("left-wheel"));
        // E-21, Army TM 10-3930-623-12, par. 4-47: one side gear held, the other turns exactly twice the cage
        assertEquals(crown.plus(crown), slips.motion().get("right-wheel"));
    }

    /** By statics alone: a side gear that turns free bears nothing, so its fellow bears nothing, nor does what drives. */
    @Test
    void aBrokenHalfShaftLeavesNeitherWheelWithTorque() {
        Train broken = new TrainSketch()
                .mesh("pinion", 12, "crown", 60)
                .on("case", "crown")
                .split("case", "left", "right")
                .rolling("left-wheel", "right-wheel")
                .joined("right", "right-wheel")
                .from("pinion", Train.ROAD);
        assertEquals(Outcome.NEUTRAL, TrainSolver.solve(broken).outcome());
        assertTrue(Statics.carryingNothing(broken)
                .containsAll(List.of("differential case", "half-shaft right", "mesh pinion/crown", "seat crown")));
        Map<String, Fraction> motion =
                assertInstanceOf(Balance.Slips.class, Statics.of(broken)).motion();
        assertEquals(Fraction.ZERO, motion.get("right"));
        assertEquals(Fraction.of(-2, 5), motion.get("left"));
    }

    private static TrainSketch axle() {
        return new TrainSketch()
                .mesh("pinion", 12, "crown", 60)
                .on("case", "crown")
                .split("case", "left", "right")
                .joined("left", "left-wheel")
                .joined("right", "right-wheel");
    }

    private static void assertSharedEqually(Train train) {
        Balance.Torques torques = Statics.of(train).torques().orElseThrow();
        assertEquals(Fraction.of(-5), torques.output());
        Connection differential = train.connections().stream()
                .filter(Connection.Split.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertEquals(Fraction.of(-5, 2), torques.on(differential).get("left"));
        assertEquals(Fraction.of(-5, 2), torques.on(differential).get("right"));
    }
}
