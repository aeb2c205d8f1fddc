package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One lane of an {@link OrderFigure}, its numbers in as many rows as keep them apart.
 *
 * @param rows by bar, the row of its number; 0 is the lowest
 */
record OrderLane(OrderFigure.Lane lane, OrderScale scale, List<Integer> rows) {
    private static final double TALL = 30;
    private static final double SHORT = 18;
    private static final double BAR = 5;
    private static final double ROW = 13;
    private static final double DIGIT = 8;
    private static final double GAP = 10;

    static OrderLane of(OrderFigure.Lane lane, OrderScale scale) {
        List<Double> ends = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        for (OrderFigure.Bar bar : lane.bars()) {
            double half = DIGIT * String.valueOf(bar.number()).length() / 2;
            double x = scale.across(bar.order());
            int row = 0;
            while (row < ends.size() && ends.get(row) > x - half - 2) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, x + half);
            rows.add(row);
        }
        return new OrderLane(lane, scale, rows);
    }

    double height() {
        int most = rows.stream().mapToInt(Integer::intValue).max().orElse(0);
        return GAP + (most + 1) * ROW + TALL;
    }

    void draw(Svg svg, double top, double right) {
        double foot = top + height();
        svg.leaf("line", "class", "foot", "x1", 4.0, "x2", right, "y1", foot, "y2", foot, "stroke", "#182129");
        svg.say("text", lane.name(), "x", 4.0, "y", foot - 8);
        for (int place = 0; place < lane.bars().size(); place++) {
            draw(lane.bars().get(place), rows.get(place), foot, svg);
        }
    }

    private void draw(OrderFigure.Bar bar, int row, double foot, Svg svg) {
        double x = scale.across(bar.order());
        double height = bar.loaded() ? TALL : SHORT;
        double number = foot - TALL - 4 - row * ROW;
        svg.open("g", "class", bar.loaded() ? "loaded" : "idle");
        svg.say("title", bar.says());
        svg.leaf(
                "line",
                "class",
                "leader",
                "x1",
                x,
                "x2",
                x,
                "y1",
                foot - height,
                "y2",
                number + 1,
                "stroke",
                "#b9c1c6");
        svg.leaf(
                "rect",
                "x",
                x - BAR / 2,
                "y",
                foot - height,
                "width",
                BAR,
                "height",
                height,
                "fill",
                bar.loaded() ? "#b5400c" : "#ffffff",
                "stroke",
                bar.loaded() ? "#b5400c" : "#182129");
        svg.say("text", String.valueOf(bar.number()), "x", x, "y", number, "text-anchor", "middle", "font-size", 12);
        svg.close();
    }
}
