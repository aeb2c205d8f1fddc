package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Orders across a figure, each factor of ten as wide as the next. */
record OrderScale(double lowest, double highest, double left, double right) {
    private static final double[] STEPS = {1, 2, 5};
    private static final double MARGIN = 1.15;
    /** Nearer than this, numbers at the foot would run into one another. */
    private static final double LEAST_GAP = 52;

    static OrderScale over(double lowest, double highest, double left, double right) {
        return new OrderScale(lowest / MARGIN, highest * MARGIN, left, right);
    }

    double across(double order) {
        return left + (right - left) * Math.log(order / lowest) / Math.log(highest / lowest);
    }

    /** Lines from top to bottom, with their orders, and their frequencies where these are known. */
    void draw(Svg svg, double top, double bottom, Optional<Double> hzOfOrderOne) {
        for (double order : marks()) {
            double x = across(order);
            svg.leaf("line", "class", "mark", "x1", x, "x2", x, "y1", top, "y2", bottom, "stroke", "#b9c1c6");
            svg.say("text", shown(order), "x", x, "y", bottom + 16, "text-anchor", "middle");
            hzOfOrderOne.ifPresent(
                    hz -> svg.say("text", shown(order * hz), "x", x, "y", bottom + 34, "text-anchor", "middle"));
        }
        svg.say("text", "Order", "x", 4.0, "y", bottom + 16);
        hzOfOrderOne.ifPresent(hz -> svg.say("text", "Hz", "x", 4.0, "y", bottom + 34));
        svg.say(
                "text",
                "Order: how often for each turn of the input",
                "x",
                (left + right) / 2,
                "y",
                bottom + 52,
                "text-anchor",
                "middle");
    }

    private List<Double> marks() {
        List<Double> marks = new ArrayList<>();
        double decade = Math.pow(10, Math.floor(Math.log10(lowest)));
        double last = left - LEAST_GAP;
        for (; decade <= highest; decade *= 10) {
            for (double step : STEPS) {
                double order = step * decade;
                if (order >= lowest && order <= highest && across(order) - last >= LEAST_GAP) {
                    marks.add(order);
                    last = across(order);
                }
            }
        }
        return marks;
    }

    /** With as many decimals as a mark needs. */
    private static String shown(double number) {
        if (number >= 10) {
            return Svg.number(Math.rint(number));
        }
        return number >= 0.1 ? Svg.number(number) : String.format(Locale.ROOT, "%.3f", number);
    }
}
