package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/** Transfer boxes: ranges, and what goes to which axle. */
class TransferBoxTest {
    private static final Fraction HALF = Fraction.of(1, 2);

    /** In high the intermediate gear is an idler and its teeth do not count. */
    @ParameterizedTest
    @CsvSource({"high, 35/29", "low, 33/29 47/21"})
    void oystercatcherGoesThroughItsIntermediateShaft(String range, String pairs) {
        for (String axle : new String[] {"two-wheel", "four-wheel"}) {
            Placed placed = Placed.of("oystercatcher").with("range", range).with("front-axle", axle);
            assertEquals(Pairs.ratio(pairs), placed.ratio(), axle);
        }
    }

    @Test
    void oystercatcherInNeutralDrivesNeitherAxle() {
        assertEquals(
                Outcome.NEUTRAL,
                Placed.of("oystercatcher").with("front-axle", "four-wheel").outcome());
    }

    @Test
    void withTwoWheelsDrivingTheFrontOutputBearsNothing() {
        Placed two = Placed.of("oystercatcher").with("range", "high").with("front-axle", "two-wheel");
        assertEquals(Fraction.ZERO, two.torque("road front-output", "front-output"));
        assertEquals(
                Pairs.ratio("35/29"),
                two.torque("road rear-output", "rear-output").absolute());
        assertFalse(two.motion().carrying().contains("front-dogs"));
    }

    /** Dogs tie both axles to one speed: how they share is not for the box to say. */
    @Test
    void withFourWheelsDrivingTheShareDependsOnTheRoad() {
        Placed four = Placed.of("oystercatcher").with("range", "high").with("front-axle", "four-wheel");
        assertTrue(four.torques().shareIsAssumed());
        assertTrue(four.motion().carrying().contains("front-dogs"));
    }

    /** Low: sun drives, ring in the case, carrier driven. The chain has as many teeth above as below. */
    @ParameterizedTest
    @CsvSource({"high, 1/1", "low, 136/50"})
    void greenshank(String range, String ratio) {
        for (String lock : new String[] {"open", "locked"}) {
            Placed placed = Placed.of("greenshank").with("range", range).with("centre-lock", lock);
            assertEquals(Pairs.ratio(ratio), placed.ratio(), lock);
        }
    }

    @Test
    void theBevelDifferentialOfGreenshankSharesEqually() {
        Placed open = Placed.of("greenshank").with("range", "high").with("centre-lock", "open");
        assertFalse(open.torques().shareIsAssumed());
        assertEquals(HALF, open.torque("road rear-output", "rear-output").absolute());
        assertEquals(HALF, open.torque("road front-output", "front-output").absolute());
        assertTrue(Placed.of("greenshank")
                .with("range", "high")
                .with("centre-lock", "locked")
                .torques()
                .shareIsAssumed());
    }

    @Test
    void theEpicyclicDifferentialOfDotterelSharesAsItsTeeth() {
        Placed open = Placed.of("dotterel").with("centre-lock", "open");
        assertEquals(Fraction.ONE, open.ratio());
        assertFalse(open.torques().shareIsAssumed());
        assertEquals(
                Fraction.of(70, 70 + 38),
                open.torque("road rear-output", "rear-output").absolute());
        assertEquals(
                Fraction.of(38, 70 + 38),
                open.torque("road front-output", "front-output").absolute());
    }

    @Test
    void theLockOfDotterelTiesRingAndCarrier() {
        Placed locked = Placed.of("dotterel").with("centre-lock", "locked");
        assertEquals(Fraction.ONE, locked.ratio());
        assertTrue(locked.torques().shareIsAssumed());
    }
}
