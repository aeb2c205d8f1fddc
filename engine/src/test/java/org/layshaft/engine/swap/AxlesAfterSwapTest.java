package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.RollingCircumference;
import org.layshaft.engine.stated.Telling;

/** Whole cars of which only one axle gets another ratio. */
class AxlesAfterSwapTest {

    /** With the front axle in, two axles of 43/11 and 41/11 lock on the road; in two-wheel drive nothing holds the rear. */
    @Test
    void anotherRearAxleLocksWhatADogSleeveTies() {
        Comparison rear = Swaps.compare("ibis", Map.of("rear-axle-ring-gear", 41));
        assertTrue(rear.axlesBefore().stream().allMatch(TiedAxles::match));
        assertFalse(rear.axlesAfter().isEmpty());
        for (TiedAxles axles : rear.axlesAfter()) {
            boolean frontFirst = axles.first().startsWith("front");
            assertEquals(
                    frontFirst ? Fraction.of(43, 41) : Fraction.of(41, 43),
                    axles.ratioOfFirst().over(axles.ratioOfSecond()));
        }
        for (GearComparison gear : rear.gears()) {
            boolean fourWheel = gear.before().orElseThrow().gear().contains("four-wheel");
            assertEquals(fourWheel ? Outcome.LOCKED : Outcome.DRIVES, gear.outcome());
            assertEquals(fourWheel ? Optional.empty() : Optional.of(Fraction.of(41, 43)), gear.factor());
        }
        assertFalse(rear.gateHolds());
    }

    @Test
    void bothAxlesTogetherStayFree() {
        Comparison both = Swaps.compare("ibis", Map.of("rear-axle-ring-gear", 41, "front-axle-ring-gear", 41));
        assertTrue(both.axlesAfter().stream().allMatch(TiedAxles::match));
        assertTrue(both.gateHolds());
        both.gears().forEach(gear -> assertEquals(Optional.of(Fraction.of(41, 43)), gear.factor()));
    }

    /** A centre differential evens them out; only its lock ties them. */
    @Test
    void aCentreDifferentialEvensThemOut() {
        Comparison rear = Swaps.compare("crane", Map.of("rear-axle-ring-gear", 41));
        for (GearComparison gear : rear.gears()) {
            String name = gear.before().orElseThrow().gear();
            boolean tied =
                    rear.axlesAfter().stream().anyMatch(axles -> axles.gear().equals(name));
            assertEquals(name.contains("locked"), tied, name);
            assertEquals(tied ? Outcome.LOCKED : Outcome.DRIVES, gear.outcome(), name);
        }
    }

    @Test
    void whatItComesToOnTheRoad() {
        TiedAxles axles = new TiedAxles("1", "front", Fraction.of(-41, 11), "rear", Fraction.of(-40, 11));
        assertEquals(
                Telling.told(Fraction.of(5, 2)),
                axles.mismatch(Telling.told(RollingCircumference.stated(2000))).percent());
        assertEquals(
                List.of("the tyre is missing"),
                axles.mismatch(Telling.missing("the tyre")).percent().because());
    }
}
