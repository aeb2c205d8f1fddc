package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Seat;

/** Gears: solid with their shaft where fixed, with air round it where free, a collar of teeth where on a sleeve. */
final class GearFigures {
    private static final double BOSS = 3;
    private static final double PITCH_LINE_BEYOND = 4;
    private static final double TOOTH_BAND = 9;
    private static final double HATCH = 6;
    private static final double LEAST_ROOM_FOR_TEXT = 12;

    private final Plan plan;

    GearFigures(Plan plan) {
        this.plan = plan;
    }

    Figure of(Gear gear) {
        if (gear.form() == GearForm.INTERNAL) {
            return new RingFigures(plan).of(gear);
        }
        Optional<Axle> axle = plan.lines().axlesAcross().stream()
                .filter(across -> across.joins(gear))
                .findFirst();
        if (axle.isPresent()) {
            return new BevelFigures(plan, axle.get()).of(gear);
        }
        Box box = plan.gearBox(gear.id());
        double inner = inner(gear);
        List<Box> boxes = plan.twin(gear.id()).map(twin -> List.of(box, twin)).orElse(List.of(box));
        return new Figure(
                gear,
                box,
                ink(gear),
                boxes,
                svg -> boxes.forEach(each -> {
                    svg.path(inner == 0 ? solid(each) : halves(each, inner), "class", "body");
                    hatch(svg, gear, each);
                    pitchLines(svg, each);
                    teeth(svg, gear, each, inner);
                }));
    }

    static Ink ink(Gear gear) {
        return gear.seat() == Seat.FIXED ? Ink.FIXED : gear.seat() == Seat.RIM ? Ink.SLEEVE : Ink.FREE;
    }

    /** Where the body ends toward the axis. */
    private double inner(Gear gear) {
        double shaft = plan.shaftRadius(gear.carrier(), plan.restX(gear.id()));
        return switch (gear.seat()) {
            case FIXED -> plan.isHollow(gear.carrier(), plan.restX(gear.id())) ? shaft : 0;
            case RIM -> plan.sleeveRadius();
            case FREE, SLIDING -> shaft + Sizes.NEEDLE_GAP;
        };
    }

    private static Pen solid(Box box) {
        double boss = Sizes.SHAFT_RADIUS + BOSS;
        double y = box.y();
        return Pen.at(box.left(), box.top())
                .across(box.right())
                .upDown(y - boss)
                .across(box.right() + BOSS)
                .upDown(y + boss)
                .across(box.right())
                .upDown(box.bottom())
                .across(box.left())
                .upDown(y + boss)
                .across(box.left() - BOSS)
                .upDown(y - boss)
                .across(box.left())
                .close();
    }

    static Pen halves(Box box, double inner) {
        return Pen.around(new Box(box.left(), box.top(), box.right(), box.y() - inner))
                .box(new Box(box.left(), box.y() + inner, box.right(), box.bottom()));
    }

    private double band(Gear gear) {
        double deep = plan.radius(gear.id()) - inner(gear);
        return Math.min(TOOTH_BAND, deep / 2.5);
    }

    /** Teeth as one sees them from the side: along the axis where straight cut, aslant where helical. */
    private void hatch(Svg svg, Gear gear, Box box) {
        double band = band(gear);
        Pen pen = new Pen();
        for (int way : new int[] {-1, 1}) {
            double edge = way < 0 ? box.top() : box.bottom();
            double root = edge - way * band;
            pen.move(box.left(), root).across(box.right());
            if (gear.form() == GearForm.SPROCKET) {
                pen.move(box.left(), edge - way * band / 2).across(box.right());
                continue;
            }
            if (gear.helixDeg() == 0) {
                pen.move(box.left(), edge - way * band / 3).across(box.right());
                pen.move(box.left(), edge - way * band * 2 / 3).across(box.right());
            } else {
                for (double x = box.left() + HATCH / 2; x + HATCH / 2 < box.right(); x += HATCH) {
                    pen.move(x, Math.max(edge, root)).line(x + HATCH / 2, Math.min(edge, root));
                }
            }
        }
        svg.path(pen, "class", "hatch", "fill", "none", "stroke-width", 0.8);
    }

    private static void pitchLines(Svg svg, Box box) {
        double left = box.left() - PITCH_LINE_BEYOND;
        double right = box.right() + PITCH_LINE_BEYOND;
        Pen pen = Pen.at(left, box.top()).across(right).move(left, box.bottom()).across(right);
        svg.path(pen, "class", "pitch-line", "fill", "none", "stroke-width", 0.8, "stroke-dasharray", "7 2 1.5 2");
    }

    private void teeth(Svg svg, Gear gear, Box box, double inner) {
        double root = plan.radius(gear.id()) - band(gear);
        double least = inner == 0 ? Sizes.SHAFT_RADIUS - 3 : inner;
        if (root - least < LEAST_ROOM_FOR_TEXT) {
            return;
        }
        double y = box.y() + freeSide(gear) * (least + root) / 2;
        number(svg, gear, box.x(), y, root - least > 18 ? 14 : 12);
    }

    /** The number of its teeth. */
    static void number(Svg svg, Gear gear, double x, double y, double size) {
        svg.say(
                "text",
                Integer.toString(gear.teeth()),
                "class",
                "teeth",
                "x",
                x,
                "y",
                y + 4.5,
                "font-size",
                size,
                "text-anchor",
                "middle",
                "fill",
                Ink.LINE,
                "stroke",
                "none");
    }

    /** Up is -1, down 1: away from what it meshes with. */
    int freeSide(Gear gear) {
        double toMates = plan.layout()
                .everyMesh()
                .filter(mesh -> mesh.joins(gear.id()))
                .mapToDouble(mesh -> toward(mesh, gear))
                .sum();
        return toMates > 0 ? -1 : 1;
    }

    private double toward(Mesh mesh, Gear gear) {
        return Math.signum(plan.gearY(mesh.other(gear.id())) - plan.gearY(gear.id()));
    }
}
