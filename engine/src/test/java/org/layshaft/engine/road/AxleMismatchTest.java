package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.AxleMismatch.ForcedSlip;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;

class AxleMismatchTest {
    private static final Telling<RollingCircumference> TWO_METRES = Telling.told(RollingCircumference.stated(2000));

    /** 500 turns of the wheels a km: 2050 turns of one shaft and 2000 of the other. */
    @Test
    void shorterFrontAxle() {
        AxleMismatch axles = new AxleMismatch(ratio(41, 10), TWO_METRES, ratio(4, 1), TWO_METRES);
        assertEquals(Telling.told(Fraction.of(2050)), axles.frontTurnsPerKm());
        assertEquals(Telling.told(Fraction.of(2000)), axles.rearTurnsPerKm());
        assertEquals(Telling.told(Fraction.of(5, 2)), axles.percent());
        assertEquals(Telling.told(Fraction.of(50)), axles.windUpTurnsPerKm());
        assertEquals(
                Telling.told(Optional.of(new ForcedSlip(false, Fraction.of(1, 41), Fraction.of(1, 40)))),
                axles.forcedSlip());
    }

    /** Way over the ground of each turn of the locked shafts, counted in mm: the second road to the slip. */
    @Test
    void slipByTheWayOfOneTurnOfTheShafts() {
        AxleMismatch worn = new AxleMismatch(
                ratio(41, 11),
                Telling.told(RollingCircumference.stated(2113)),
                ratio(41, 11),
                Telling.told(RollingCircumference.stated(2080)));
        Fraction front = Fraction.of(2113).over(Fraction.of(41, 11));
        Fraction rear = Fraction.of(2080).over(Fraction.of(41, 11));
        ForcedSlip slip = worn.forcedSlip().value().orElseThrow().orElseThrow();
        assertEquals(
                new ForcedSlip(
                        true, front.minus(rear).over(front), front.minus(rear).over(rear)),
                slip);
        assertEquals(Telling.told(rear.minus(front).over(front).times(Fraction.of(100))), worn.percent());
    }

    @Test
    void aSmallerTyreCanMakeUpForALongerAxle() {
        AxleMismatch axles = new AxleMismatch(
                ratio(4, 1), TWO_METRES, ratio(38, 10), Telling.told(RollingCircumference.stated(1900)));
        assertEquals(Telling.told(Fraction.ZERO), axles.percent());
        assertEquals(Telling.told(Fraction.ZERO), axles.windUpTurnsPerKm());
        assertEquals(Telling.told(Optional.empty()), axles.forcedSlip());
    }

    @Test
    void everyMissingFactIsNamed() {
        AxleMismatch bare =
                new AxleMismatch(Optional.empty(), TWO_METRES, Optional.empty(), Telling.missing("the rear tyre"));
        assertEquals(
                List.of(
                        "the front axle ratio is missing",
                        "the rear axle ratio is missing",
                        "the rear tyre is missing"),
                bare.percent().because());
        assertEquals(bare.percent().because(), bare.forcedSlip().because());
    }

    @Test
    void impossibleRatiosAreRefusedTogether() {
        assertEquals(
                2,
                assertThrows(
                                ImpossibleFactsException.class,
                                () -> new AxleMismatch(ratio(0, 1), TWO_METRES, ratio(-4, 1), TWO_METRES))
                        .problems()
                        .size());
    }

    private static Optional<Fraction> ratio(long numerator, long denominator) {
        return Optional.of(Fraction.of(numerator, denominator));
    }
}
