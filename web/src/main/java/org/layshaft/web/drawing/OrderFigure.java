package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Orders as bars along a line, one lane for each kind, a number at each bar. How loud anything is nobody knows: what
 * carries power stands tall and filled, what only turns short and hollow.
 *
 * @param lanes from the top
 * @param heard what was measured
 * @param hzOfOrderOne so that frequencies may stand beside the orders; empty where no speed is known
 */
public record OrderFigure(List<Lane> lanes, Optional<Band> heard, Optional<Double> hzOfOrderOne) {
    private static final double WIDTH = 1000;
    private static final double LEFT = 170;
    private static final double RIGHT = 20;
    private static final double TOP = 24;
    private static final double FOOT = 58;

    public OrderFigure {
        lanes = List.copyOf(lanes);
    }

    /** One kind of thing that repeats. */
    public record Lane(String name, List<Bar> bars) {
        public Lane {
            bars = List.copyOf(bars);
        }
    }

    /**
     * One order.
     *
     * @param number by which it is found in the table
     * @param order more than 0
     * @param says what a pointer that rests on it is told
     */
    public record Bar(int number, double order, boolean loaded, String says) {}

    /** A stretch of orders. */
    public record Band(double from, double to, String says) {}

    /** As SVG; empty where there is nothing to draw. */
    public String svg(String title) {
        double[] orders = lanes.stream()
                .flatMap(lane -> lane.bars().stream())
                .mapToDouble(Bar::order)
                .sorted()
                .toArray();
        if (orders.length == 0) {
            return "";
        }
        double lowest = heard.map(band -> Math.min(band.from(), orders[0])).orElse(orders[0]);
        double highest = heard.map(band -> Math.max(band.to(), orders[orders.length - 1]))
                .orElse(orders[orders.length - 1]);
        OrderScale scale = OrderScale.over(lowest, highest, LEFT, WIDTH - RIGHT);
        List<OrderLane> drawn =
                lanes.stream().map(lane -> OrderLane.of(lane, scale)).toList();
        double depth = drawn.stream().mapToDouble(OrderLane::height).sum();
        Svg svg = new Svg();
        svg.open(
                "svg",
                "class",
                "orders",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 %s %s".formatted(Svg.number(WIDTH), Svg.number(TOP + depth + FOOT)),
                "role",
                "img",
                "aria-labelledby",
                "orders-title",
                "font-family",
                "sans-serif",
                "font-size",
                13);
        svg.say("title", title, "id", "orders-title");
        scale.draw(svg, TOP, TOP + depth, hzOfOrderOne);
        heard.ifPresent(band -> draw(band, scale, depth, svg));
        double top = TOP;
        for (OrderLane lane : drawn) {
            lane.draw(svg, top, WIDTH - RIGHT);
            top += lane.height();
        }
        return svg.close().toString();
    }

    private static void draw(Band band, OrderScale scale, double depth, Svg svg) {
        double from = scale.across(band.from());
        double width = Math.max(scale.across(band.to()) - from, 2);
        svg.leaf(
                "rect", "class", "heard", "x", from, "y", TOP, "width", width, "height", depth, "fill", "#cfe0f2",
                "stroke", "#0b4f94");
        boolean nearTheEnd = from > WIDTH / 2;
        svg.say(
                "text",
                band.says(),
                "x",
                nearTheEnd ? from + width : from,
                "y",
                TOP - 8,
                "text-anchor",
                nearTheEnd ? "end" : "start",
                "font-weight",
                "bold");
    }
}
