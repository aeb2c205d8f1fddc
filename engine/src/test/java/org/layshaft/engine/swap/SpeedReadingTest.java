package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road.SpeedRead;

class SpeedReadingTest {
    private static final Layout SANDPIPER = Boxes.the("sandpiper");
    private static final Change PINION_OF_TEN = Swaps.change(SANDPIPER, Map.of("drive-pinion", 10));

    /** The output shaft turned 35/9 times for one turn of the wheels, and turns 35/10 times now. */
    @ParameterizedTest
    @CsvSource({"GEARBOX_OUTPUT, 9/10", "DIFFERENTIAL, 1", "WHEELS, 1"})
    void aFinalDriveInsideCountsWhereItLiesBetween(SpeedRead place, String read) {
        assertEquals(
                read,
                read(Swaps.reading(SANDPIPER, place), PINION_OF_TEN)
                        .value()
                        .orElseThrow()
                        .toString());
    }

    @Test
    void wherePlaceMattersItMustBeTold() {
        assertEquals(
                List.of("where the speed is read is missing"),
                read(SANDPIPER, PINION_OF_TEN).because());
    }

    /** Gears before that shaft do not matter to it. */
    @Test
    void gearsOfTheBoxDoNotChangeTheReading() {
        Change second = Swaps.change(SANDPIPER, Map.of("input-second", 22, "second", 41));
        assertEquals(Telling.told(Fraction.ONE), read(SANDPIPER, second));
        assertEquals(Telling.told(Fraction.ONE), read(Swaps.reading(SANDPIPER, SpeedRead.GEARBOX_OUTPUT), second));
    }

    /** Two pinions on one ring gear: a new one changes what the shaft under it turns, not the other. */
    @Test
    void oneOfTwoOutputShafts() {
        Layout godwit = Swaps.reading(Boxes.the("godwit"), SpeedRead.GEARBOX_OUTPUT);
        assertEquals(
                List.of("which of several shafts the speed is read from is missing"),
                read(godwit, Swaps.change(godwit, Map.of("lower-pinion", 18))).because());
        assertEquals(Telling.told(Fraction.of(34, 35)), read(godwit, Swaps.change(godwit, Map.of("ring-gear", 68))));
    }

    @Test
    void tyreAndSpeedGearsTogether() {
        Layout curlew = Boxes.the("curlew");
        Change change = Change.NONE
                .with(new OtherTyre.Rolling(2200))
                .with(new SpeedDrive(new SpeedGears(8, 18), new SpeedGears(8, 17)));
        assertEquals(Telling.told(Fraction.of(2132 * 18, 2200 * 17)), read(curlew, change));
    }

    private static Telling<Fraction> read(Layout layout, Change change) {
        return Comparison.of(layout, change, Running.NOT_STATED, Swaps.REASONER)
                .speedometer()
                .then(SpeedometerChange::readForTrue);
    }
}
