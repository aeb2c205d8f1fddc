package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.Gear;

/** Gears with teeth inside, cut through: a rim above and below the axis, and a web down to what the ring turns with. */
record RingFigures(Plan plan) {
    private static final double BAND = 6;
    private static final double HATCH = 6;

    Figure of(Gear gear) {
        double y = plan.gearY(gear.id());
        double inner = plan.radius(gear.id());
        double outer = plan.outer(gear);
        Box box = plan.gearBox(gear.id());
        List<Box> boxes = new ArrayList<>();
        Box hull = box;
        if (plan.planetSides().webWay(gear) != 0) {
            Stands.Stand web = plan.planetSides().web(gear);
            hull = box.with(new Box(web.left(), box.top(), web.right(), box.bottom()));
            double foot = foot(gear, web);
            boxes.add(new Box(web.left(), y - inner, web.right(), y - foot));
            boxes.add(new Box(web.left(), y + foot, web.right(), y + inner));
        }
        boxes.add(new Box(hull.left(), y - outer, hull.right(), y - inner));
        boxes.add(new Box(hull.left(), y + inner, hull.right(), y + outer));
        Pen pen = new Pen();
        boxes.forEach(pen::box);
        return new Figure(gear, hull, GearFigures.ink(gear), boxes, svg -> {
            svg.path(pen, "class", "body");
            svg.path(teeth(gear, box, inner), "class", "hatch", "fill", "none", "stroke-width", 0.8);
            GearFigures.number(svg, gear, box.x(), y - (outer + inner + BAND) / 2 - 0.5, 11);
        });
    }

    private double foot(Gear gear, Stands.Stand web) {
        boolean onShaft = plan.nesting().stands(gear.carrier()).all().stream()
                .anyMatch(stand -> stand.id().equals(gear.id()));
        return onShaft
                ? new ShaftShape(plan, plan.layout().shaft(gear.carrier())).reach(web)
                : plan.shaftRadius(gear.carrier(), web.x());
    }

    /** Teeth on the inside of the rim. */
    private static Pen teeth(Gear gear, Box box, double inner) {
        Pen pen = new Pen();
        for (int way : new int[] {-1, 1}) {
            double tip = box.y() + way * inner;
            double root = tip + way * BAND;
            pen.move(box.left(), root).across(box.right());
            for (double x = box.left() + HATCH / 2; x + HATCH / 2 < box.right(); x += HATCH) {
                double lean = gear.helixDeg() == 0 ? 0 : HATCH / 2;
                pen.move(x, root).line(x + lean, tip);
            }
        }
        return pen;
    }
}
