package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Side;

/** Transaxles: final drive and differential in one case with the gears. */
class TransaxleFamiliesTest {
    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, FRONT, 48/14 65/16",
        "1-2-sleeve, REAR, 41/21 65/16",
        "3-4-sleeve, FRONT, 35/27 65/16",
        "3-4-sleeve, REAR, 30/32 65/16",
        "5-6-sleeve, FRONT, 26/36 65/16",
        "5-6-sleeve, REAR, 23/39 65/16",
        "R-sleeve, FRONT, -44/14 65/16"
    })
    void lapwing(String sleeve, Side side, String pairs) {
        assertEquals(Pairs.ratio(pairs), Placed.of("lapwing").with(sleeve, side).ratio());
    }

    @Test
    void reverseOfLapwingHasABlockingRing() {
        Engagement reverse =
                Placed.of("lapwing").layout().member("R-sleeve").at(Side.FRONT).orElseThrow();
        assertTrue(((Engagement.Couples) reverse).ring().isPresent());
    }

    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, FRONT, 47/13 70/17",
        "1-2-sleeve, REAR, 40/20 70/17",
        "3-4-sleeve, FRONT, 33/27 70/17",
        "3-4-sleeve, REAR, 28/32 70/17",
        "5-6-sleeve, FRONT, 26/32 70/21",
        "5-6-sleeve, REAR, 23/35 70/21",
        "R-sleeve, FRONT, -47/13 43/47 70/21"
    })
    void godwit(String sleeve, Side side, String pairs) {
        assertEquals(Pairs.ratio(pairs), Placed.of("godwit").with(sleeve, side).ratio());
    }

    /** The shaft that does not drive is turned back by its pinion, at the ratio of the two pinions. */
    @Test
    void bothOutputShaftsOfGodwitTurnInEveryGearAndOneCarries() {
        Placed third = Placed.of("godwit").with("3-4-sleeve", Side.FRONT);
        assertEquals(third.speed("lower-output").times(Fraction.of(17, 21)), third.speed("upper-output"));
        Set<String> carrying = third.motion().carrying();
        assertTrue(carrying.containsAll(List.of("lower-output", "lower-pinion", "ring-gear")));
        assertFalse(carrying.contains("upper-output"));
    }

    /** In reverse first is an idler: it carries, though no sleeve couples it. */
    @Test
    void firstOfGodwitHandsReverseOn() {
        Placed reverse = Placed.of("godwit").with("R-sleeve", Side.FRONT);
        assertTrue(reverse.motion().carrying().contains("first"));
        assertFalse(reverse.motion().carrying().contains("lower-output"));
        assertEquals(Fraction.of(-13, 47), reverse.speed("first"));
    }

    @Test
    void aGearOnEachOutputShaftOfGodwitLocksIt() {
        Placed both = Placed.of("godwit").with("1-2-sleeve", Side.REAR).with("5-6-sleeve", Side.FRONT);
        assertEquals(Outcome.LOCKED, both.outcome());
    }

    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, FRONT, 48/15 35/9",
        "1-2-sleeve, REAR, 42/21 35/9",
        "3-4-sleeve, FRONT, 36/27 35/9",
        "3-4-sleeve, REAR, 31/32 35/9",
        "5-sleeve, FRONT, 27/36 35/9",
        "R-sleeve, REAR, -45/15 35/9"
    })
    void sandpiper(String sleeve, Side side, String pairs) {
        assertEquals(
                Pairs.ratio(pairs), Placed.of("sandpiper").with(sleeve, side).ratio());
    }

    /** With the pinion turning against the input, only a crown on the right drives forward. */
    @Test
    void theCrownOfSandpiperTurnsAgainstItsPinion() {
        Placed second = Placed.of("sandpiper").with("1-2-sleeve", Side.REAR);
        assertEquals(Fraction.of(-21, 42), second.speed("drive-pinion"));
        assertEquals(Fraction.of(21 * 9, 42 * 35), second.speed("ring-gear"));
    }

    @Test
    void bothWheelsBearAlike() {
        Placed first = Placed.of("sandpiper").with("1-2-sleeve", Side.FRONT);
        assertEquals(first.torque("road left wheel", "left wheel"), first.torque("road right wheel", "right wheel"));
        assertEquals(
                Pairs.ratio("48/15 35/9").over(Fraction.of(2)),
                first.torque("road left wheel", "left wheel").absolute());
    }
}
