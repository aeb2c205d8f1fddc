package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

/** Sanderling: two input shafts, one inside the other, each with a clutch. */
class DualClutchTest {
    private static final String ODD = "odd-clutch";
    private static final String EVEN = "even-clutch";

    @ParameterizedTest
    @CsvSource({
        "odd-clutch, 1-3-sleeve, FRONT, 50/14 70/17",
        "even-clutch, 2-4-sleeve, FRONT, 43/21 70/17",
        "odd-clutch, 1-3-sleeve, REAR, 37/27 70/17",
        "even-clutch, 2-4-sleeve, REAR, 31/33 70/17",
        "odd-clutch, 5-R-sleeve, FRONT, 27/37 70/17",
        "even-clutch, 6-sleeve, REAR, 24/40 70/17",
        "odd-clutch, 5-R-sleeve, REAR, -44/14 70/17"
    })
    void eachGearDrivesWithItsOwnClutchClosed(String clutch, String sleeve, Side side, String pairs) {
        Placed gear = Placed.of("sanderling").with(sleeve, side);
        assertEquals(Outcome.NEUTRAL, gear.outcome(), "both clutches open");
        assertEquals(Pairs.ratio(pairs), gear.with(clutch, Side.FRONT).ratio());
        String other = clutch.equals(ODD) ? EVEN : ODD;
        assertEquals(Outcome.NEUTRAL, gear.with(other, Side.FRONT).outcome(), "the other clutch closed");
    }

    /** Third waits engaged while second drives: its input shaft turns, with nothing on it. */
    @Test
    void aGearOfTheOtherHalfMayStandReady() {
        Placed second = Placed.of("sanderling").with("2-4-sleeve", Side.FRONT).with(EVEN, Side.FRONT);
        Placed ready = second.with("1-3-sleeve", Side.REAR);
        assertEquals(second.ratio(), ready.ratio());
        assertEquals(Fraction.of(21 * 37, 43 * 27), ready.speed("inner-input"));
        assertFalse(ready.motion().carrying().contains("inner-input"));
        assertTrue(ready.motion().carrying().contains("outer-input"));
    }

    /** Both clutches closed on two gears tie the input to two speeds at once. */
    @Test
    void bothClutchesClosedOnTwoGearsLock() {
        Placed both = Placed.of("sanderling")
                .with("2-4-sleeve", Side.FRONT)
                .with("1-3-sleeve", Side.REAR)
                .with(EVEN, Side.FRONT)
                .with(ODD, Side.FRONT);
        assertEquals(Outcome.LOCKED, both.outcome());
    }

    /** Two gears of one half lock that half, and with it the wheels, even while the other clutch drives. */
    @Test
    void twoGearsOfOneHalfLock() {
        Placed two = Placed.of("sanderling").with("1-3-sleeve", Side.FRONT).with("5-R-sleeve", Side.FRONT);
        assertEquals(Outcome.LOCKED, two.with(ODD, Side.FRONT).outcome());
        assertEquals(Outcome.OUTPUT_HELD, two.outcome());
        assertEquals(
                Outcome.LOCKED,
                two.with("2-4-sleeve", Side.FRONT).with(EVEN, Side.FRONT).outcome());
    }
}
