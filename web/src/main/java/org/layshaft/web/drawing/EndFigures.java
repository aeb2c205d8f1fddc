package org.layshaft.web.drawing;

import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.HalfShaft;

/** Where power comes in and where it goes out: clutch, differential, half-shafts with their wheels. */
final class EndFigures {
    private static final double FLYWHEEL = 58;
    private static final double DISC = 48;
    private static final double WHEEL_HALF_WIDTH = 11;
    private static final double WHEEL_RADIUS = 44;

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
        double x = plan.x(differential.id());
        double y = plan.carrierY(differential.id());
        double half = plan.half(differential.id());
        double high = Outlines.DIFFERENTIAL_RADIUS;
        Box box = Box.about(x, y, half, high);
        return new Figure(differential, box, Ink.DIFFERENTIAL, svg -> {
            svg.rect(box, "class", "body", "rx", 10.0);
            Pen bevels = new Pen();
            for (int way : new int[] {-1, 1}) {
                // a side gear, and a pinion between the two
                bevels.move(x + way * 30, y - 12)
                        .line(x + way * 14, y - 24)
                        .upDown(y + 24)
                        .line(x + way * 30, y + 12)
                        .close();
                bevels.move(x - 12, y + way * 36)
                        .line(x - 22, y + way * 26)
                        .across(x + 22)
                        .line(x + 12, y + way * 36)
                        .close();
            }
            svg.path(Pen.at(x, y - 36).upDown(y + 36), "class", "cross-pin", "fill", "none", "stroke-width", 4.0);
            svg.path(bevels, "class", "bevels", "fill", Ink.PAPER, "stroke-width", 1.3);
        });
    }

    /** The wheel at the end of a half-shaft. */
    Box wheel(HalfShaft half) {
        Differential differential = plan.layout().the(Differential.class, half.differential());
        boolean first = differential.sides().indexOf(half.id()) == 0;
        double x = first ? around.leftWheelX() : around.rightWheelX();
        return Box.about(x, plan.carrierY(half.differential()), WHEEL_HALF_WIDTH, WHEEL_RADIUS);
    }

    Figure halfShaft(HalfShaft half) {
        double y = plan.carrierY(half.differential());
        double x = plan.x(half.differential());
        Box wheel = wheel(half);
        Box bar = wheel.x() < x
                ? new Box(wheel.x(), y - Sizes.SHAFT_RADIUS, x - 30, y + Sizes.SHAFT_RADIUS)
                : new Box(x + 30, y - Sizes.SHAFT_RADIUS, wheel.x(), y + Sizes.SHAFT_RADIUS);
        return new Figure(half, bar, Ink.SHAFT, svg -> {
            svg.rect(bar, "class", "body");
            svg.rect(wheel, "class", "body wheel", "rx", 7.0);
        });
    }
}
