package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Side;

/** Turnstone: gears with dogs that slide without leaving their mesh, moved by a drum; a chain to the wheel. */
class DrumBoxTest {
    private final Placed neutral = Placed.of("turnstone");

    /** Each one pair and the sprockets; the wheel turns as the output does, against the input. */
    @Test
    void thePlacesOfTheDrumAreTheSixGearsInOrder() {
        List<Fraction> expected = Stream.of("-35/13", "-31/17", "-28/20", "-26/22", "-24/24", "-23/25")
                .map(pair -> Pairs.ratio(pair + " 43/16"))
                .toList();
        List<Lever.Place> drum = neutral.lever(Lever.GEAR).places();
        assertEquals(
                expected, drum.stream().map(neutral::with).map(Placed::ratio).toList());
    }

    /** Third and fourth are driven by the gears that slide, and turn as their teeth say wherever those stand. */
    @Test
    void aSlidingGearStaysInMeshOfEveryGear() {
        for (Lever.Place place : neutral.lever(Lever.GEAR).places()) {
            assertEquals(Fraction.of(-20, 28), neutral.with(place).speed("third"), place::toString);
            assertEquals(Fraction.of(-22, 26), neutral.with(place).speed("fourth"), place::toString);
        }
    }

    @Test
    void inNeutralTheFreeGearsTurnAndTheWheelDoesNotFollow() {
        assertEquals(Outcome.NEUTRAL, neutral.outcome());
        assertEquals(Fraction.of(-13, 35), neutral.speed("first"));
    }

    /** What the drum alone prevents. */
    @Test
    void twoSlidingGearsAtOnceLock() {
        Placed two = neutral.with("output-fifth", Side.FRONT).with("output-sixth", Side.REAR);
        assertEquals(Outcome.LOCKED, two.outcome());
    }
}
