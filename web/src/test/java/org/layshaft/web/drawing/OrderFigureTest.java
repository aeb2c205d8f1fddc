package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.web.drawing.OrderFigure.Band;
import org.layshaft.web.drawing.OrderFigure.Bar;
import org.layshaft.web.drawing.OrderFigure.Lane;

class OrderFigureTest {
    @Test
    void eachFactorOfTenIsAsWideAsTheNext() {
        OrderScale scale = new OrderScale(0.1, 10, 100, 300);
        assertEquals(100, scale.across(0.1), 1e-9);
        assertEquals(200, scale.across(1), 1e-9);
        assertEquals(300, scale.across(10), 1e-9);
    }

    @Test
    void numbersThatWouldOverlapStandInRows() {
        OrderScale scale = new OrderScale(1, 10, 0, 1000);
        Lane crowded = new Lane("crowded", List.of(bar(10, 2), bar(11, 2.001), bar(12, 2.002), bar(13, 5)));
        assertEquals(List.of(0, 1, 2, 0), OrderLane.of(crowded, scale).rows());
    }

    @Test
    void whatWasMeasuredIsDrawnEvenBeyondAllBars() {
        Lane lane = new Lane("lane", List.of(bar(1, 2)));
        String svg = new OrderFigure(
                        List.of(lane), Optional.of(new Band(500, 510, "measured: 8000 Hz")), Optional.of(16.0))
                .svg("Orders");
        assertTrue(svg.contains("measured: 8000 Hz"), svg);
        assertTrue(svg.contains(">Hz</text>"), svg);
    }

    @Test
    void noBarsNoFigure() {
        assertEquals("", new OrderFigure(List.of(), Optional.empty(), Optional.empty()).svg("Orders"));
    }

    private static Bar bar(int number, double order) {
        return new Bar(number, order, true, "says");
    }
}
