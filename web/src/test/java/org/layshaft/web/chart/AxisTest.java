package org.layshaft.web.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisTest {
    @Test
    void itEndsAtARoundNumberNoLessThanTheHighest() {
        assertEquals(140, Axis.fromZero(129.8, 0, 700, 12).to(), 1e-9);
        assertEquals(5000, Axis.fromZero(4160, 300, 0, 7).to(), 1e-9);
        assertEquals(0.5, Axis.fromZero(0.47, 0, 100, 5).to(), 1e-9);
    }

    @Test
    void marksAreRoundAndFarEnoughApart() {
        Axis axis = new Axis(0, 140, 70, 960, false);

        List<Double> marks = axis.marks(60);
        assertEquals(0, marks.get(0), 1e-9);
        assertEquals(140, marks.get(marks.size() - 1), 1e-9);
        for (int i = 1; i < marks.size(); i++) {
            assertTrue(axis.at(marks.get(i)) - axis.at(marks.get(i - 1)) >= 60, marks::toString);
        }
    }

    @Test
    void equalFactorsAreEquallyFarApart() {
        Axis axis = Axis.byFactors(1, 16, 0, 1000);

        assertEquals(axis.at(2) - axis.at(1), axis.at(16) - axis.at(8), 1e-9);
        assertTrue(axis.at(1) > 0 && axis.at(16) < 1000);
        assertTrue(axis.marks(50).stream().allMatch(mark -> mark >= axis.from() && mark <= axis.to()));
    }
}
