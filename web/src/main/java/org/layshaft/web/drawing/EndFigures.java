package org.layshaft.web.drawing;

import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;

/** Where power comes in and where it goes out: clutch, differential, half-shafts with their wheels. */
final class EndFigures {
    private static final double FLYWHEEL = 58;
    private static final double DISC = 48;
    private static final double FLANGE = 19;
    static final double WHEEL_HALF_WIDTH = 11;
    static final double WHEEL_RADIUS = 44;
    /** From the middle of a differential to the outer face of a side gear. */
    static final double SIDE_GEAR = 30;

    private final Plan plan;
    private final Surroundings around;

    EndFigures(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
    }

    Figure clutch(Clutch clutch) {
        double x = around.clutchX();
        double y = plan.carrierY(clutch.drives());
        Box flywheel = Box.about(x - 12, y, 6, FLYWHEEL);
        Box disc = Box.about(x - 2, y, 3, DISC);
        Box plate = Box.about(x + 7, y, 5, DISC);
        return new Figure(clutch, flywheel.with(plate), Ink.CLUTCH, svg -> {
            svg.rect(flywheel, "class", "body", "rx", 2.0);
            svg.rect(disc, "class", "body");
            Pen cover = GearFigures.halves(plate, 16)
                    .move(plate.right(), y - DISC + 8)
                    .line(plate.right() + 9, y - 14)
                    .move(plate.right(), y + DISC - 8)
                    .line(plate.right() + 9, y + 14);
            svg.path(cover, "class", "body");
        });
    }

    Figure differential(Differential differential) {
        boolean across = plan.lines().across(differential.id()).isPresent();
        double x = plan.x(differential.id());
        double y = plan.carrierY(differential.id());
        Box box = across
                ? Box.about(x, y, Axle.CASE_HALF, Axle.CASE_HIGH)
                : Box.about(x, y, plan.half(differential.id()), Outlines.DIFFERENTIAL_RADIUS);
        Turned turned = new Turned(x, y, across);
        return new Figure(differential, box, Ink.DIFFERENTIAL, svg -> {
            svg.rect(box, "class", "body", "rx", 10.0);
            Pen bevels = new Pen();
            for (int way : new int[] {-1, 1}) {
                // a side gear, and a pinion between the two
                turned.polygon(bevels, way * SIDE_GEAR, -12, way * 14, -24, way * 14, 24, way * SIDE_GEAR, 12);
                turned.polygon(bevels, -12, way * 36, -22, way * 26, 22, way * 26, 12, way * 36);
            }
            svg.path(turned.line(new Pen(), 0, -36, 0, 36), "class", "cross-pin", "fill", "none", "stroke-width", 4.0);
            svg.path(bevels, "class", "bevels", "fill", Ink.PAPER, "stroke-width", 1.3);
            if (differential.limitedSlip().isPresent()) {
                svg.path(plates(turned), "class", "hatch", "fill", "none", "stroke-width", 1.6);
            }
        });
    }

    /** What makes it resist a difference: a pack of plates behind each side gear. */
    private static Pen plates(Turned turned) {
        Pen pen = new Pen();
        for (int way : new int[] {-1, 1}) {
            for (double at = SIDE_GEAR + 3; at < 41; at += 3.5) {
                turned.line(pen, way * at, -24, way * at, -11);
                turned.line(pen, way * at, 11, way * at, 24);
            }
        }
        return pen;
    }

    /** Two flanges, between the shaft of one unit and that of the next. */
    Figure joint(Joint joint) {
        Box box = Box.about(plan.x(joint.id()), plan.y(joint.id()), plan.half(joint.id()), FLANGE);
        Pen flanges = new Pen()
                .box(new Box(box.left(), box.top(), box.x() - 1, box.bottom()))
                .box(new Box(box.x() + 1, box.top(), box.right(), box.bottom()));
        return new Figure(joint, box, Ink.SHAFT, svg -> svg.path(flanges, "class", "body"));
    }

    /** The wheel at the end of a half-shaft. */
    Box wheel(HalfShaft half) {
        Differential differential = plan.layout().the(Differential.class, half.differential());
        double y = plan.carrierY(half.differential());
        if (plan.lines().across(differential.id()).isPresent()) {
            return Box.about(
                    plan.x(differential.id()),
                    y + Axle.way(differential, half.id()) * Axle.TO_WHEEL,
                    WHEEL_RADIUS,
                    WHEEL_HALF_WIDTH);
        }
        boolean first = differential.sides().indexOf(half.id()) == 0;
        double x = first ? around.leftWheelX() : around.rightWheelX();
        return Box.about(x, y, WHEEL_HALF_WIDTH, WHEEL_RADIUS);
    }

    Figure halfShaft(HalfShaft half) {
        double y = plan.carrierY(half.differential());
        double x = plan.x(half.differential());
        Box wheel = wheel(half);
        boolean across = plan.lines().across(half.differential()).isPresent();
        Box end = across
                ? Box.about(x, y + Math.signum(wheel.y() - y) * SIDE_GEAR, Sizes.SHAFT_RADIUS, 0)
                : Box.about(x + Math.signum(wheel.x() - x) * SIDE_GEAR, y, 0, Sizes.SHAFT_RADIUS);
        Box outer = across
                ? Box.about(x, wheel.y(), Sizes.SHAFT_RADIUS, 0)
                : Box.about(wheel.x(), y, 0, Sizes.SHAFT_RADIUS);
        Box bar = end.with(outer);
        return new Figure(half, bar, Ink.SHAFT, svg -> {
            svg.rect(bar, "class", "body");
            svg.rect(wheel, "class", "body wheel", "rx", 7.0);
        });
    }
}
