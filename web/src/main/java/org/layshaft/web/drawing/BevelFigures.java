package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.layshaft.kb.layout.Gear;

/** The pinion and the crown of an axle across, as cones with their axes at right angles. */
record BevelFigures(Plan plan, Axle axle) {
    private static final double CONE = 0.62;
    private static final double LINES = 7;

    Figure of(Gear gear) {
        return gear.id().equals(axle.pinion()) ? pinion(gear) : crown(gear);
    }

    /** Its wide end lies away from the axle. */
    private Figure pinion(Gear gear) {
        Box box = plan.gearBox(gear.id());
        double y = box.y();
        double wide = axle.atRear() ? box.left() : box.right();
        double narrow = axle.atRear() ? box.right() : box.left();
        double small = plan.radius(gear.id()) * CONE;
        Pen cone = Pen.at(wide, box.top())
                .line(narrow, y - small)
                .upDown(y + small)
                .line(wide, box.bottom())
                .close();
        Pen teeth = new Pen();
        for (int at = -2; at <= 2; at++) {
            double share = at / 2.5;
            teeth.move(wide, y + share * (box.bottom() - y)).line(narrow, y + (share + slant(gear)) * small);
        }
        return new Figure(gear, box, GearFigures.ink(gear), svg -> {
            svg.path(cone, "class", "body");
            svg.path(teeth, "class", "hatch", "fill", "none", "stroke-width", 0.8);
            GearFigures.number(svg, gear, box.x(), y, 12);
        });
    }

    /** Seen on its edge, its toothed face toward the middle of the pinion's shaft. */
    private Figure crown(Gear gear) {
        double x = plan.x(gear.id());
        double face = plan.gearY(gear.id()) + axle.crownWay() * plan.radius(axle.pinion()) * (1 + CONE) / 2;
        double back = face + axle.crownWay() * Axle.CROWN_THICK;
        double half = Axle.CROWN;
        Pen disc = Pen.at(x - half + 5, face)
                .across(x + half - 5)
                .line(x + half, back)
                .across(x - half)
                .close();
        Pen teeth = new Pen();
        for (double at = -half + 9; at < half - 8; at += LINES) {
            teeth.move(x + at, face).line(x + at + LINES * slant(gear), face + axle.crownWay() * 5);
        }
        Box box = new Box(x - half, Math.min(face, back), x + half, Math.max(face, back));
        return new Figure(gear, box, GearFigures.ink(gear), svg -> {
            svg.path(disc, "class", "body");
            svg.path(teeth, "class", "hatch", "fill", "none", "stroke-width", 0.8);
            GearFigures.number(svg, gear, x + (axle.atRear() ? 1 : -1) * half * 0.7, back - axle.crownWay() * 5, 11);
        });
    }

    /** The way across: from the middle of the pinion to where it touches the crown, and along this to the axle. */
    static List<Point> contact(Plan plan, Axle axle, boolean fromCrown) {
        double face = plan.gearY(axle.crown())
                + axle.crownWay() * (plan.radius(axle.pinion()) * (1 + CONE) / 2 + Axle.CROWN_THICK / 2);
        List<Point> way = new ArrayList<>(
                List.of(new Point(plan.x(axle.pinion()), face), new Point(plan.x(axle.differential()), face)));
        if (fromCrown) {
            Collections.reverse(way);
        }
        return way;
    }

    private static double slant(Gear gear) {
        return gear.helixDeg() == 0 ? 0 : 0.5;
    }
}
