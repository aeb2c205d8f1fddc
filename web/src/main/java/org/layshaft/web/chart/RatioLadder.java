package org.layshaft.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.web.drawing.Svg;

/**
 * Ratios as rungs along a line on which equal steps are equally far apart; several boxes one above the other, on one
 * scale.
 *
 * @param boxes from the top
 */
public record RatioLadder(List<Ladder> boxes) {
    private static final double WIDTH = 1000;
    private static final double LEFT = 20;
    private static final double RIGHT = 20;
    private static final double TOP = 8;
    private static final double RUNG = 26;
    private static final double LETTER = 8.5;
    private static final double LINE = 16;
    private static final double NAME = 20;

    public RatioLadder {
        boxes = List.copyOf(boxes);
    }

    /** One box. */
    public record Ladder(String name, List<Rung> rungs) {
        public Ladder {
            rungs = List.copyOf(rungs);
        }
    }

    /**
     * One gear.
     *
     * @param ratio more than 0
     * @param reverse whether it drives backward; drawn hollow
     * @param says what a pointer that rests on it is told
     */
    public record Rung(String gear, double ratio, boolean reverse, String says) {}

    /** As SVG; empty where there is no gear. */
    public String svg(String id, String title, String description) {
        double[] ratios = boxes.stream()
                .flatMap(box -> box.rungs().stream())
                .mapToDouble(Rung::ratio)
                .sorted()
                .toArray();
        if (ratios.length == 0) {
            return "";
        }
        // the highest gear, which has the lowest ratio, stands on the right, as it does on the road
        double widened = ratios[0] == ratios[ratios.length - 1] ? 1.5 : 1;
        Axis across =
                Axis.byFactors(ratios[0] / widened, ratios[ratios.length - 1] * widened, WIDTH - RIGHT - 30, LEFT + 30);
        List<Row> rows = boxes.stream().map(box -> Row.of(box, across)).toList();
        double foot = TOP + rows.stream().mapToDouble(row -> height(row)).sum();
        Svg svg = Frame.open(id, title, description, WIDTH, foot + 46);
        scale(across, foot, svg);
        double top = TOP;
        for (Row row : rows) {
            draw(row, across, top, svg);
            top += height(row);
        }
        return svg.close().toString();
    }

    private double height(Row row) {
        return (boxes.size() > 1 ? NAME : 0) + RUNG + 14 + (row.topLevel() + 1) * LINE;
    }

    private static void scale(Axis across, double foot, Svg svg) {
        for (double mark : across.marks(60)) {
            double x = across.at(mark);
            svg.leaf("line", "class", "grid", "x1", x, "x2", x, "y1", TOP, "y2", foot, "stroke", "#b9c1c6");
            svg.say("text", Svg.number(mark), "class", "mark", "x", x, "y", foot + 17, "text-anchor", "middle");
        }
        svg.say(
                "text",
                "Ratio: turns of the input for one turn of the output; equal steps are equally far apart",
                "class",
                "axis",
                "x",
                WIDTH / 2,
                "y",
                foot + 38,
                "text-anchor",
                "middle");
    }

    private void draw(Row row, Axis across, double top, Svg svg) {
        double foot = top + height(row) - 4;
        svg.leaf("line", "class", "foot", "x1", LEFT, "x2", WIDTH - RIGHT, "y1", foot, "y2", foot, "stroke", "#182129");
        if (boxes.size() > 1) {
            svg.say("text", row.name(), "class", "box", "x", LEFT, "y", top + 15, "font-weight", "bold");
        }
        row.placed().forEach(placed -> draw(placed, across.at(placed.rung().ratio()), foot, svg));
    }

    private static void draw(Placed placed, double x, double foot, Svg svg) {
        Rung rung = placed.rung();
        double y = foot - RUNG - 6 - placed.level() * LINE;
        svg.open("g", "class", rung.reverse() ? "rung reverse" : "rung");
        svg.say("title", rung.says());
        if (placed.level() > 0) {
            svg.leaf("line", "class", "leader", "x1", x, "x2", x, "y1", foot - RUNG, "y2", y + 2, "stroke", "#6b7885");
        }
        svg.leaf(
                "rect",
                "x",
                x - 3,
                "y",
                foot - RUNG,
                "width",
                6.0,
                "height",
                RUNG,
                "fill",
                rung.reverse() ? "#ffffff" : "#182129",
                "stroke",
                "#182129");
        svg.say("text", rung.gear(), "x", x, "y", y, "text-anchor", "middle", "font-weight", "bold", "font-size", 14);
        svg.close();
    }

    /** A rung, its name so many lines above the lowest. */
    private record Placed(Rung rung, int level) {}

    /** A box with the names of its rungs on as many levels as keep them apart. */
    private record Row(String name, List<Placed> placed) {
        static Row of(Ladder box, Axis across) {
            List<Double> ends = new ArrayList<>();
            List<Placed> placed = new ArrayList<>();
            for (Rung rung : box.rungs().stream()
                    .sorted((one, other) -> Double.compare(other.ratio(), one.ratio()))
                    .toList()) {
                double half = LETTER * rung.gear().length() / 2 + 3;
                double x = across.at(rung.ratio());
                int level = RatioLadder.level(ends, x - half);
                if (level == ends.size()) {
                    ends.add(0.0);
                }
                ends.set(level, x + half);
                placed.add(new Placed(rung, level));
            }
            return new Row(box.name(), placed);
        }

        int topLevel() {
            return placed.stream().mapToInt(Placed::level).max().orElse(0);
        }
    }

    /** The lowest level on which a name does not run into that before it. */
    private static int level(List<Double> ends, double left) {
        int level = 0;
        while (level < ends.size() && ends.get(level) > left) {
            level++;
        }
        return level;
    }
}
