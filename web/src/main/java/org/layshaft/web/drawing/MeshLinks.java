package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/**
 * Where power crosses from gear to gear: at the point where the two touch, or, for gears that mesh and could not be drawn
 * touching, along a dashed link. An idler off the plane has such a link to one of its mates.
 */
final class MeshLinks {
    private static final double BEYOND_EDGE = 9;
    private static final double BULGE = 26;
    private static final int PIECES = 12;
    private static final double IN_TEETH = 7;
    /** A link over less than this goes straight. */
    private static final double STRAIGHT = 24;

    private static final double CROSSING = 9;

    private final Plan plan;
    private final Figures figures;

    MeshLinks(Plan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
    }

    /** From the one gear to the other: one point where they touch, or points along their link. */
    List<Point> between(String from, String to) {
        Mesh mesh = plan.mesh(from, to);
        Optional<Axle> axle = plan.lines().axlesAcross().stream()
                .filter(across -> mesh.joins(across.crown()))
                .findFirst();
        if (axle.isPresent()) {
            return BevelFigures.contact(plan, axle.get(), from.equals(axle.get().crown()));
        }
        if (mesh.kind() == MeshKind.CHAIN && plan.x(from) == plan.x(to)) {
            double way = Math.signum(plan.gearY(to) - plan.gearY(from));
            return List.of(
                    new Point(plan.x(from), plan.gearY(from) + way * (plan.radius(from) - IN_TEETH)),
                    new Point(plan.x(to), plan.gearY(to) - way * (plan.radius(to) - IN_TEETH)));
        }
        if (plan.touch(mesh)) {
            Point at = plan.contact(mesh);
            return List.of(at);
        }
        List<Point> points = new ArrayList<>(curve(from, to));
        if (plan.gearY(from) > plan.gearY(to)) {
            Collections.reverse(points);
        }
        return points;
    }

    boolean any() {
        return !apart().isEmpty();
    }

    private List<Mesh> apart() {
        return plan.made().stream()
                .filter(mesh -> !plan.touch(mesh) && mesh.kind() != MeshKind.CHAIN)
                .toList();
    }

    /** From the teeth of the upper gear to those of the lower, bulging to the side where there is more room. */
    private List<Point> curve(String one, String other) {
        boolean oneIsUpper = plan.gearY(one) <= plan.gearY(other);
        Box upper = plan.gearBox(oneIsUpper ? one : other);
        Box lower = plan.gearBox(oneIsUpper ? other : one);
        Point from = new Point(upper.x(), upper.bottom() - Math.min(IN_TEETH, upper.height() / 4));
        Point to = new Point(lower.x(), lower.top() + Math.min(IN_TEETH, lower.height() / 4));
        boolean left = freerOnLeft(upper, lower);
        double edge = left
                ? Math.min(upper.left(), lower.left()) - BEYOND_EDGE
                : Math.max(upper.right(), lower.right()) + BEYOND_EDGE;
        double middle = (from.x() + to.x()) / 2;
        // A curve of second degree comes half way to the point that draws it aside.
        double via = lower.top() - upper.bottom() < STRAIGHT ? middle : 2 * edge - middle;
        List<Point> points = new ArrayList<>();
        for (int piece = 0; piece <= PIECES; piece++) {
            double t = (double) piece / PIECES;
            points.add(new Point(bend(from.x(), via, to.x(), t), bend(from.y(), (from.y() + to.y()) / 2, to.y(), t)));
        }
        return points;
    }

    private static double bend(double from, double via, double to, double t) {
        return (1 - t) * (1 - t) * from + 2 * t * (1 - t) * via + t * t * to;
    }

    private boolean freerOnLeft(Box upper, Box lower) {
        double left = Math.min(upper.left(), lower.left());
        double right = Math.max(upper.right(), lower.right());
        double top = Math.min(upper.y(), lower.y());
        double bottom = Math.max(upper.y(), lower.y());
        return covered(new Box(left - 2 * BULGE, top, left, bottom))
                <= covered(new Box(right, top, right + 2 * BULGE, bottom));
    }

    private double covered(Box box) {
        return figures.all().stream()
                .flatMap(figure -> figure.covers().stream())
                .mapToDouble(covered -> covered.shared(box))
                .sum();
    }

    void write(Svg svg, Room room) {
        plan.made().stream()
                .filter(mesh -> mesh.kind() == MeshKind.CHAIN)
                .forEach(mesh -> new Chain(plan, mesh).write(svg, room));
        for (Mesh mesh : apart()) {
            List<Point> points = curve(mesh.first(), mesh.second());
            Pen pen = Pen.at(points.get(0).x(), points.get(0).y());
            points.stream().skip(1).forEach(point -> pen.line(point.x(), point.y()));
            svg.path(
                    pen,
                    "class",
                    "mesh-link",
                    "data-mesh",
                    mesh.id(),
                    "fill",
                    "none",
                    "stroke",
                    Ink.LINE,
                    "stroke-width",
                    1.6,
                    "stroke-dasharray",
                    "6 4");
            if (mesh.kind().isBevel()) {
                crossing(svg, points.get(points.size() / 2));
            }
            points.forEach(point -> room.take(Box.about(point.x(), point.y(), 3, 3)));
            name(svg, room, points);
        }
    }

    /** Two axes at right angles, for a bevel pair that is drawn on two lines. */
    private static void crossing(Svg svg, Point at) {
        svg.leaf(
                "circle",
                "class",
                "crossing",
                "cx",
                at.x(),
                "cy",
                at.y(),
                "r",
                CROSSING,
                "fill",
                Ink.PAPER,
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.4);
        svg.path(
                Pen.at(at.x() - CROSSING + 2, at.y())
                        .across(at.x() + CROSSING - 2)
                        .move(at.x(), at.y() - CROSSING + 2)
                        .upDown(at.y() + CROSSING - 2),
                "class",
                "crossing-axes",
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.4,
                "stroke-dasharray",
                "5 1.5 1.5 1.5");
    }

    /** Where there is no room for the words, the key still says what the dashes are. */
    private static void name(Svg svg, Room room, List<Point> points) {
        Label label = new Label(List.of("meshes", "with"), 12, "note");
        double aside = label.width() / 2 + 6;
        points.stream()
                .flatMap(point -> Stream.of(
                        label.box(point.x() - aside, point.y() - label.height() / 2),
                        label.box(point.x() + aside, point.y() - label.height() / 2)))
                .filter(box -> room.covered(box) == 0)
                .findFirst()
                .ifPresent(box -> label.write(svg, room.take(box)));
    }
}
