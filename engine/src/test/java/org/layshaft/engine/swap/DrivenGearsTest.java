package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;

class DrivenGearsTest {
    private static final Layout CURLEW = Boxes.the("curlew");
    private static final Change LONGER_AXLE = Change.NONE.withAxleRatio(new BigDecimal("3.7"));

    /** 18 teeth × 3.7 / 4.1 is 16.24; each choice put into the box leaves the error that was told of it. */
    @Test
    void theReadingIsKeptAsWellAsThereAreGears() {
        DrivenGears right = DrivenGears.after(speedometer(LONGER_AXLE), 18);
        assertEquals(Telling.told(Fraction.of(18 * 37, 41)), right.exact());
        List<DrivenGears.Choice> choices =
                right.among(List.of(15, 16, 17, 18)).value().orElseThrow();
        assertEquals(
                List.of(16, 17, 15, 18),
                choices.stream().map(DrivenGears.Choice::teeth).toList());
        for (DrivenGears.Choice choice : choices) {
            Change both = LONGER_AXLE.with(new SpeedDrive(new SpeedGears(7, 18), new SpeedGears(7, choice.teeth())));
            assertEquals(Telling.told(choice.errorPercent()), speedometer(both).then(SpeedometerChange::errorPercent));
        }
    }

    @Test
    void gearsThatAreEquallyNearAreBothKept() {
        DrivenGears between = new DrivenGears(Telling.told(Fraction.of(2 * 16 * 17, 33)));
        assertEquals(
                List.of(Fraction.of(100, 33), Fraction.of(-100, 33)),
                between.among(List.of(16, 17)).value().orElseThrow().stream()
                        .map(DrivenGears.Choice::errorPercent)
                        .toList());
    }

    private static Telling<SpeedometerChange> speedometer(Change change) {
        return Comparison.of(CURLEW, change, Running.NOT_STATED, Swaps.REASONER).speedometer();
    }
}
