package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedometerChange.Change;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;

class SpeedometerChangeTest {
    private static final Optional<Change> AS_BEFORE = Optional.empty();
    private static final Optional<Change> SHORTER_AXLE = change(Fraction.of(386, 100), Fraction.of(406, 100));
    private static final Optional<Change> LARGER_TYRE = change(Fraction.of(1900), Fraction.of(2000));
    private static final Optional<ReadAt> AT_GEARBOX = Optional.of(ReadAt.GEARBOX_OUTPUT);
    private static final Optional<ReadAt> AT_DIFFERENTIAL = Optional.of(ReadAt.DIFFERENTIAL_OR_WHEEL);

    /** Fewer turns for the same way: 1900/2000 of the true speed are read, wherever they are read. */
    @Test
    void aLargerTyreReadsLow() {
        SpeedometerChange larger = new SpeedometerChange(LARGER_TYRE, AS_BEFORE, AS_BEFORE, Optional.empty());
        assertEquals(Telling.told(Fraction.of(19, 20)), larger.readForTrue());
        assertEquals(Telling.told(Fraction.of(-5)), larger.errorPercent());
    }

    @Test
    void theAxleMattersAtTheGearboxAndNotAtTheDifferential() {
        assertEquals(
                Telling.told(Fraction.of(2000, 386)),
                new SpeedometerChange(AS_BEFORE, SHORTER_AXLE, AS_BEFORE, AT_GEARBOX).errorPercent());
        assertEquals(
                Telling.told(Fraction.ZERO),
                new SpeedometerChange(AS_BEFORE, SHORTER_AXLE, AS_BEFORE, AT_DIFFERENTIAL).errorPercent());
        assertEquals(
                Optional.of("cannot be told, where the speed is read is missing"),
                new SpeedometerChange(AS_BEFORE, SHORTER_AXLE, AS_BEFORE, Optional.empty())
                        .errorPercent()
                        .whyNot());
    }

    /** A driven gear of one tooth in 21 less turns the cable faster. */
    @Test
    void theDriveGearMattersEverywhere() {
        Optional<Change> fewerTeeth = change(Fraction.of(7, 21), Fraction.of(7, 20));
        for (Optional<ReadAt> place : List.of(AT_GEARBOX, AT_DIFFERENTIAL)) {
            SpeedometerChange changed = new SpeedometerChange(AS_BEFORE, AS_BEFORE, fewerTeeth, place);
            assertEquals(Telling.told(Fraction.of(5)), changed.errorPercent());
            assertEquals(Telling.told(Fraction.of(21)), changed.drivenTeethToPutRight(20));
        }
    }

    /** Engine speed is not the matter here: what tyre and axle do to each other is, and they can cancel. */
    @Test
    void tyreAndAxleCanMakeUpForEachOther() {
        Optional<Change> axle = change(Fraction.of(38, 10), Fraction.of(4));
        assertEquals(
                Telling.told(Fraction.ZERO),
                new SpeedometerChange(LARGER_TYRE, axle, AS_BEFORE, AT_GEARBOX).errorPercent());
    }

    /** A trade rule: driven teeth = drive teeth × tyre turns a mile × axle ratio / 1000; 8 × 661 × 3.00 give 15.9. */
    @Test
    void drivenTeethByTheRuleOfAThousandTurnsAMile() {
        Fraction turnsAMile = Fraction.of(661);
        Fraction truly = Fraction.of(8).times(turnsAMile).times(Fraction.of(3)).over(Fraction.of(1000));
        assertEquals("15.9", "%.1f".formatted(truly.toDouble()));
        // a box that read truly with 16 teeth on 3.00 × 2/3 = 2.00 wants half as many more for 3.00
        SpeedometerChange axle =
                new SpeedometerChange(AS_BEFORE, change(Fraction.of(2), Fraction.of(3)), AS_BEFORE, AT_GEARBOX);
        Fraction before = Fraction.of(8).times(turnsAMile).times(Fraction.of(2)).over(Fraction.of(1000));
        assertEquals(Telling.told(truly), axle.readForTrue().map(before::times));
        assertEquals(Telling.told(Fraction.of(24)), axle.drivenTeethToPutRight(16));
    }

    /** 195/65 R15 to 205/55 R16, as the trade reckons it: about 0.4 per cent of the diameter. */
    @Test
    void twoSizesThatAreNearlyTheSame() {
        Optional<Change> tyre = change(mm("195/65 R15"), mm("205/55 R16"));
        Telling<Fraction> error = new SpeedometerChange(tyre, AS_BEFORE, AS_BEFORE, Optional.empty()).errorPercent();
        assertEquals("0.4", "%.1f".formatted(error.value().orElseThrow().toDouble()));
    }

    @Test
    void impossibleFiguresAreRefused() {
        Fraction some = Fraction.ONE;
        assertThrows(ImpossibleFactsException.class, () -> new Change(Fraction.ZERO, some));
        assertThrows(ImpossibleFactsException.class, () -> new Change(some, Fraction.of(-1)));
    }

    private static Fraction mm(String tyre) {
        return RollingCircumference.of(TyreSize.read(tyre))
                .value()
                .orElseThrow()
                .exactMm();
    }

    private static Optional<Change> change(Fraction before, Fraction after) {
        return Optional.of(new Change(before, after));
    }
}
