package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

class TrainSolverTest {
    private static final Stance CURLEW_THIRD = Stance.NEUTRAL.with("3-4-sleeve", Side.REAR);

    @Test
    void aGearDrivesAndItsPathIsInOrder() {
        Motion motion = TrainSolver.solve(curlew(Changes.NONE, CURLEW_THIRD));
        assertEquals(Outcome.DRIVES, motion.outcome());
        assertEquals(Optional.of(Fraction.of(47 * 34, 24 * 37)), motion.ratio());
        assertEquals(
                List.of(
                        "input",
                        "input-gear",
                        "cluster-driven",
                        "countershaft",
                        "cluster-third",
                        "third",
                        "3-4-sleeve",
                        "output"),
                List.copyOf(motion.carrying()));
    }

    @Test
    void straightThroughTheCountershaftTurnsAndCarriesNothing() {
        Motion motion = TrainSolver.solve(curlew(Changes.NONE, Stance.NEUTRAL.with("5-R-sleeve", Side.FRONT)));
        assertEquals(Optional.of(Fraction.of(-24, 47)), motion.speedOf("countershaft"));
        assertEquals(List.of("input", "input-gear", "5-R-sleeve", "output"), List.copyOf(motion.carrying()));
    }

    @Test
    void inNeutralWhatTheOutputTakesAlongHasNoSpeed() {
        Motion motion = TrainSolver.solve(curlew(Changes.NONE, Stance.NEUTRAL));
        assertEquals(Outcome.NEUTRAL, motion.outcome());
        assertEquals(Optional.of(Fraction.of(24 * 37, 47 * 34)), motion.speedOf("third"));
        assertEquals(Optional.empty(), motion.speedOf("output"));
        assertEquals(Optional.empty(), motion.speedOf("3-4-sleeve"));
        assertEquals(Set.of(), motion.carrying());
        assertEquals(Optional.empty(), motion.ratio());
    }

    @Test
    void twoGearsAtOnceLock() {
        Motion motion = TrainSolver.solve(curlew(Changes.NONE, CURLEW_THIRD.with("1-2-sleeve", Side.REAR)));
        assertEquals(Outcome.LOCKED, motion.outcome());
        assertEquals(Optional.of(Fraction.ZERO), motion.speedOf("input"));
        assertEquals(Optional.of(Fraction.ZERO), motion.speedOf("fourth"), "tied to what is locked");
    }

    @Test
    void aSeizedGearInNeutralDrivesAndWithAnotherGearLocks() {
        Changes seized = SomeChanges.seized("second");
        assertEquals(
                Optional.of(Fraction.of(47 * 43, 24 * 28)),
                TrainSolver.solve(curlew(seized, Stance.NEUTRAL)).ratio());
        assertEquals(
                Outcome.LOCKED, TrainSolver.solve(curlew(seized, CURLEW_THIRD)).outcome());
    }

    /** Behind a cut of the output shaft between third and second, two gears in front of it lock the input alone. */
    @Test
    void inFrontOfACutTheInputCanBeHeldAlone() {
        Changes cut = SomeChanges.cut("output", "third");
        Motion motion = TrainSolver.solve(curlew(cut, CURLEW_THIRD.with("5-R-sleeve", Side.FRONT)));
        assertEquals(Outcome.INPUT_HELD, motion.outcome());
        assertEquals(Optional.of(Fraction.ZERO), motion.speedOf("input"));
        assertEquals(Optional.empty(), motion.speedOf("output#rear"), "free behind the cut");
    }

    /** The countershaft cut behind the driven gear: two gears behind it lock the output alone. */
    @Test
    void behindACutTheOutputCanBeHeldAlone() {
        Changes cut = SomeChanges.cut("countershaft", "cluster-driven");
        Motion motion = TrainSolver.solve(curlew(cut, CURLEW_THIRD.with("1-2-sleeve", Side.REAR)));
        assertEquals(Outcome.OUTPUT_HELD, motion.outcome());
        assertEquals(Optional.of(Fraction.ONE), motion.speedOf("input"));
        assertEquals(Optional.of(Fraction.ZERO), motion.speedOf("output"));
    }

    @Test
    void aPartedHalfShaftTakesTheDriveFromEveryGear() {
        TrainBuilder plover = new TrainBuilder(Boxes.the("plover"), SomeChanges.parted("left-half-shaft"));
        for (Stance stance : Stances.all(Boxes.the("plover"))) {
            assertTrue(TrainSolver.solve(plover.at(stance)).ratio().isEmpty(), stance::toString);
        }
    }

    @Test
    void standingAndRollingFixWhatNeutralLeavesOpen() {
        Train neutral = curlew(Changes.NONE, Stance.NEUTRAL);
        Map<String, Fraction> standing = TrainSolver.speedsGiven(
                        neutral, Map.of("input", Fraction.ONE, "output", Fraction.ZERO))
                .orElseThrow();
        assertEquals(Fraction.ZERO, standing.get("3-4-sleeve"));
        assertEquals(Fraction.of(24 * 37, 47 * 34), standing.get("third"));
        assertEquals(
                Optional.empty(),
                TrainSolver.speedsGiven(
                        curlew(Changes.NONE, CURLEW_THIRD), Map.of("input", Fraction.ONE, "output", Fraction.ZERO)));
    }

    private static Train curlew(Changes changes, Stance stance) {
        return new TrainBuilder(Boxes.the("curlew"), changes).at(stance);
    }
}
