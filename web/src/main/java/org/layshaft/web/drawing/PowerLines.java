package org.layshaft.web.drawing;

import java.util.List;

/** Paints the ways of power: a line with a halo, and arrow heads along it. */
final class PowerLines {
    private static final double HEAD = 12;
    private static final double LAST_HEAD = 14;
    /** A shorter stretch has no head of its own. */
    private static final double LEAST_STRETCH = 44;

    private final PathLine line;

    PowerLines(PathLine line) {
        this.line = line;
    }

    void write(Svg svg, PowerPath path) {
        path.ways().forEach(way -> write(svg, way));
    }

    private void write(Svg svg, List<String> way) {
        List<Point> points = line.points(way);
        if (points.size() < 2) {
            return;
        }
        Pen pen = Pen.at(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(point -> pen.line(point.x(), point.y()));
        svg.open("g", "class", "power", "data-way", String.join(" ", way), "fill", "none", "stroke-linejoin", "round");
        svg.path(pen, "class", "power-halo", "stroke", Ink.PAPER, "stroke-width", 7.0);
        svg.path(pen, "class", "power-line", "stroke", Ink.POWER, "stroke-width", 3.5);
        svg.path(heads(points), "class", "power-head", "fill", Ink.POWER, "stroke", Ink.PAPER, "stroke-width", 1.0);
        svg.close();
    }

    private static Pen heads(List<Point> points) {
        Pen heads = new Pen();
        int last = points.size() - 1;
        for (int at = 1; at <= last; at++) {
            Point from = points.get(at - 1);
            Point to = points.get(at);
            double alongX = to.x() - from.x();
            double alongY = to.y() - from.y();
            if (at == last) {
                Heads.solid(heads, to.x(), to.y(), alongX, alongY, LAST_HEAD);
            } else if (Math.hypot(alongX, alongY) > LEAST_STRETCH) {
                Heads.solid(heads, from.x() + alongX / 2, from.y() + alongY / 2, alongX, alongY, HEAD);
            }
        }
        return heads;
    }
}
