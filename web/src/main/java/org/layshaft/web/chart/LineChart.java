package org.layshaft.web.chart;

import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.web.drawing.Svg;

/**
 * Lines over two axes that begin at nothing. Each line is told by its name, which stands at it; lines of one sort have
 * one stroke. Where there are many, names stand upright, and one that would cover another is left out.
 *
 * @param across what is along the foot, with its unit
 * @param up what is along the side, with its unit
 * @param lines the later over the earlier
 */
public record LineChart(String across, String up, List<Line> lines) {
    private static final double WIDTH = 1000;
    private static final double HEIGHT = 460;
    private static final double LEFT = 76;
    private static final double RIGHT = 40;
    private static final double TOP = 30;
    private static final double FOOT = 56;
    private static final double ROOM = 1.04;
    /** More gears than these are many. */
    private static final int FEW = 9;

    private static final double ROOM_FOR_UPRIGHT = 1.3;
    private static final double LETTER_HEIGHT = 14;

    public LineChart {
        lines = List.copyOf(lines);
    }

    /** What a line is. */
    public enum Sort {
        /** A gear: unbroken. */
        GEAR("gear", null),
        /** From gear to gear: dashed. */
        SHIFT("shift", "3 4"),
        /** What holds back: long dashes. */
        AGAINST("against", "12 5");

        private final String word;
        private final String dashes;

        Sort(String word, String dashes) {
            this.word = word;
            this.dashes = dashes;
        }
    }

    /** Where on a line its name stands. */
    public enum NameAt {
        HIGHEST,
        END,
        NOWHERE
    }

    /** A point, both numbers no less than 0. */
    public record Point(double x, double y) {}

    /**
     * One line.
     *
     * @param points at least two, by rising {@code x}, or straight up or down
     * @param says what a pointer that rests on it is told
     */
    public record Line(String name, Sort sort, NameAt nameAt, List<Point> points, String says) {
        public Line {
            points = List.copyOf(points);
        }

        private Point named() {
            Point end = points.get(points.size() - 1);
            return nameAt == NameAt.END
                    ? end
                    : points.stream()
                            .max((one, other) -> Double.compare(one.y(), other.y()))
                            .orElse(end);
        }
    }

    /** As SVG; empty where there is no line. */
    public String svg(String id, String title, String description) {
        if (lines.isEmpty()) {
            return "";
        }
        Axis xs = Axis.fromZero(most(true) * ROOM, LEFT, WIDTH - RIGHT, 12);
        Axis ys = Axis.fromZero(most(false) * (many() ? ROOM_FOR_UPRIGHT : ROOM), HEIGHT - FOOT, TOP, 7);
        Svg svg = Frame.open(id, title, description, WIDTH, HEIGHT);
        grid(xs, ys, svg);
        lines.forEach(line -> draw(line, xs, ys, svg));
        names(xs, ys, svg);
        return svg.close().toString();
    }

    private double most(boolean across) {
        return lines.stream()
                .flatMap(line -> line.points().stream())
                .mapToDouble(point -> across ? point.x() : point.y())
                .max()
                .orElse(1);
    }

    private void grid(Axis xs, Axis ys, Svg svg) {
        double foot = HEIGHT - FOOT;
        for (double mark : xs.marks(60)) {
            double x = xs.at(mark);
            svg.leaf("line", "class", "grid", "x1", x, "x2", x, "y1", TOP, "y2", foot, "stroke", "#b9c1c6");
            svg.say("text", Svg.number(mark), "class", "mark", "x", x, "y", foot + 18, "text-anchor", "middle");
        }
        for (double mark : ys.marks(45)) {
            double y = ys.at(mark);
            svg.leaf("line", "class", "grid", "x1", LEFT, "x2", WIDTH - RIGHT, "y1", y, "y2", y, "stroke", "#b9c1c6");
            svg.say("text", Svg.number(mark), "class", "mark", "x", LEFT - 8, "y", y + 4, "text-anchor", "end");
        }
        svg.leaf(
                "path",
                "class",
                "foot",
                "d",
                "M%s %sV%sH%s"
                        .formatted(Svg.number(LEFT), Svg.number(TOP), Svg.number(foot), Svg.number(WIDTH - RIGHT)),
                "fill",
                "none",
                "stroke",
                "#182129");
        svg.say("text", up, "class", "axis", "x", 4.0, "y", 16.0);
        svg.say(
                "text",
                across,
                "class",
                "axis",
                "x",
                (LEFT + WIDTH - RIGHT) / 2,
                "y",
                HEIGHT - 10,
                "text-anchor",
                "middle");
    }

    private static void draw(Line line, Axis xs, Axis ys, Svg svg) {
        String points = line.points().stream()
                .map(point -> Svg.number(xs.at(point.x())) + "," + Svg.number(ys.at(point.y())))
                .collect(Collectors.joining(" "));
        svg.open("g", "class", "line " + line.sort().word);
        svg.say("title", line.says());
        svg.leaf(
                "polyline",
                "points",
                points,
                "fill",
                "none",
                "stroke",
                "#182129",
                "stroke-width",
                line.sort() == Sort.SHIFT ? 1.5 : 2.5,
                "stroke-dasharray",
                line.sort().dashes);
        svg.close();
    }

    private boolean many() {
        return lines.stream().filter(line -> line.sort() == Sort.GEAR).count() > FEW;
    }

    /** From the last to the first: the highest gears are the farthest apart. */
    private void names(Axis xs, Axis ys, Svg svg) {
        double free = Double.POSITIVE_INFINITY;
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            if (line.nameAt() == NameAt.NOWHERE) {
                continue;
            }
            double x = xs.at(line.named().x());
            double y = ys.at(line.named().y());
            if (!many() || line.sort() != Sort.GEAR) {
                boolean late = x > WIDTH - RIGHT - 60;
                name(
                        line,
                        late ? x - 4 : x,
                        line.sort() == Sort.AGAINST ? y + 20 : y - 7,
                        late ? "end" : "middle",
                        svg);
            } else if (x < free - LETTER_HEIGHT) {
                svg.open(
                        "g",
                        "transform",
                        "translate(%s %s) rotate(-90)".formatted(Svg.number(x + 5), Svg.number(y - 7)));
                name(line, 0, 0, "start", svg);
                svg.close();
                free = x;
            }
        }
    }

    private static void name(Line line, double x, double y, String anchor, Svg svg) {
        svg.say(
                "text",
                line.name(),
                "class",
                "series " + line.sort().word,
                "x",
                x,
                "y",
                y,
                "text-anchor",
                anchor,
                "font-weight",
                "bold",
                "font-size",
                14,
                "paint-order",
                "stroke",
                "stroke",
                "#ffffff",
                "stroke-width",
                4,
                "stroke-linejoin",
                "round");
    }
}
