package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Side;

/** Spoonbill: a four-speed with a power take-off on the countershaft. */
class TakeOffTest {
    private final Placed box = Placed.of("spoonbill");
    private final Placed engaged = box.with("take-off-dog-sleeve", Side.FRONT);

    @ParameterizedTest
    @CsvSource({
        "1-2-sleeve, REAR, 47/22 52/17",
        "1-2-sleeve, FRONT, 47/22 41/28",
        "3-4-sleeve, REAR, 47/22 30/39",
        "3-4-sleeve, FRONT, 1/1",
        "R-sleeve, FRONT, -47/22 47/16"
    })
    void theGearsDriveWithTheTakeOffInAndOut(String sleeve, Side side, String pairs) {
        assertEquals(Pairs.ratio(pairs), box.with(sleeve, side).ratio());
        assertEquals(Pairs.ratio(pairs), engaged.with(sleeve, side).ratio());
    }

    /** It hangs on the countershaft, so it turns at one speed in every gear and in neutral. */
    @Test
    void theTakeOffTurnsWithTheCountershaftInNeutralToo() {
        Fraction expected = Fraction.of(22 * 39, 47 * 33);
        assertEquals(List.of("take-off"), box.layout().takeOffs());
        assertEquals(Outcome.NEUTRAL, engaged.outcome());
        assertEquals(expected, engaged.speed("take-off"));
        assertEquals(expected, engaged.with("1-2-sleeve", Side.FRONT).speed("take-off"));
    }

    @Test
    void withItsSleeveOutItStandsFreeWhileItsGearTurns() {
        assertTrue(box.motion().speedOf("take-off").isEmpty());
        assertEquals(Fraction.of(22 * 39, 47 * 33), box.speed("take-off-gear"));
    }
}
