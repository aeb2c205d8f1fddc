package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;

/** Bearings: crossed boxes in the case and between shafts, rows of needles under free gears. */
final class BearingFigures {
    private static final double DEEP_IN_CASE = 14;
    private static final double DEEP_BETWEEN_SHAFTS = 8;
    private static final double NEEDLE_PITCH = 7;

    private final Plan plan;

    BearingFigures(Plan plan) {
        this.plan = plan;
    }

    Figure of(Bearing bearing) {
        Layout layout = plan.layout();
        if (layout.find(Gear.class, bearing.outer()).isPresent()) {
            return needles(bearing);
        }
        boolean inCase = bearing.outer().equals(Bearing.CASE);
        boolean through = !inCase && plan.nesting().within(bearing.outer()).contains(bearing.inner());
        double inner = inCase || through ? plan.shaftRadius(bearing.inner(), plan.x(bearing.id())) : Sizes.NOSE_RADIUS;
        double outer = inner + (inCase ? DEEP_IN_CASE : DEEP_BETWEEN_SHAFTS);
        Box box = Box.about(plan.x(bearing.id()), plan.carrierY(bearing.inner()), plan.half(bearing.id()), outer);
        Box above = new Box(box.left(), box.top(), box.right(), box.y() - inner);
        Box below = new Box(box.left(), box.y() + inner, box.right(), box.bottom());
        return new Figure(bearing, box, Ink.BEARING, svg -> {
            svg.path(new Pen().box(above).box(below), "class", "body");
            svg.path(cross(cross(new Pen(), above), below), "class", "hatch", "fill", "none", "stroke-width", 1.0);
        });
    }

    private static Pen cross(Pen pen, Box box) {
        return pen.move(box.left(), box.top())
                .line(box.right(), box.bottom())
                .move(box.left(), box.bottom())
                .line(box.right(), box.top());
    }

    private Figure needles(Bearing bearing) {
        double y = plan.gearY(bearing.outer());
        double half = plan.half(bearing.outer()) - 2;
        double shaft = plan.shaftRadius(bearing.inner(), plan.restX(bearing.outer()));
        Box box = Box.about(plan.x(bearing.outer()), y, half, shaft + Sizes.NEEDLE_GAP);
        List<Box> boxes = plan.twinDistance(bearing.inner())
                .map(down -> List.of(box, box.moved(0, down)))
                .orElse(List.of(box));
        return new Figure(bearing, box, Ink.BEARING, boxes, svg -> boxes.forEach(each -> needles(svg, each, shaft)));
    }

    private static void needles(Svg svg, Box box, double shaft) {
        double middle = shaft + Sizes.NEEDLE_GAP / 2;
        svg.path(
                GearFigures.halves(box, shaft),
                "class",
                "target",
                "fill",
                "none",
                "stroke",
                "none",
                "pointer-events",
                "all");
        int count = (int) (box.width() / NEEDLE_PITCH);
        for (int side : new int[] {-1, 1}) {
            for (int at = 0; at < count; at++) {
                double x = box.x() + (at - (count - 1) / 2.0) * NEEDLE_PITCH;
                svg.leaf(
                        "circle",
                        "class",
                        "body",
                        "cx",
                        x,
                        "cy",
                        box.y() + side * middle,
                        "r",
                        2.1,
                        "stroke-width",
                        1.0);
            }
        }
    }
}
