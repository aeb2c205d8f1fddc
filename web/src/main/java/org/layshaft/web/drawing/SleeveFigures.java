package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** Hubs, the sleeves that slide on them, and what these slide over. */
final class SleeveFigures {
    private static final double HUB_HALF = 15;
    private static final double TEETH_DEEP = 11;
    private static final double TEETH_PROUD = 2;
    private static final double GROOVE_DEEP = 6;

    private final Plan plan;

    SleeveFigures(Plan plan) {
        this.plan = plan;
    }

    Figure hub(Hub hub) {
        Box box = Box.about(plan.restX(hub.sleeve()), plan.carrierY(hub.shaft()), HUB_HALF, plan.hubRadius());
        return new Figure(hub, box, Ink.HUB, svg -> {
            double x = box.x();
            boolean hollow = plan.isHollow(hub.shaft(), x);
            svg.path(
                    hollow ? GearFigures.halves(box, plan.shaftRadius(hub.shaft(), x)) : Pen.around(box),
                    "class",
                    "body");
            Pen splines = new Pen();
            for (double spline = box.left() + 5; spline < box.right(); spline += 5) {
                splines.move(spline, box.top())
                        .upDown(box.top() + 4)
                        .move(spline, box.bottom())
                        .upDown(box.bottom() - 4);
            }
            svg.path(splines, "class", "hatch", "fill", "none", "stroke-width", 0.8);
        });
    }

    Figure sleeve(Sleeve sleeve) {
        double y = plan.carrierY(sleeve.shaft());
        Box box = Box.about(plan.x(sleeve.id()), y, plan.half(sleeve.id()), plan.sleeveRadius());
        double groove = box.x() + grooveAside(sleeve);
        double wide = grooveHalf(sleeve);
        Pen pen = new Pen();
        for (int way : new int[] {-1, 1}) {
            double outer = y + way * plan.sleeveRadius();
            double floor = outer - way * GROOVE_DEEP;
            pen.move(box.left(), y + way * plan.hubRadius())
                    .upDown(outer)
                    .across(groove - wide)
                    .upDown(floor)
                    .across(groove + wide)
                    .upDown(outer)
                    .across(box.right())
                    .upDown(y + way * plan.hubRadius())
                    .close();
        }
        return new Figure(sleeve, box, Ink.SLEEVE, svg -> svg.path(pen, "class", "body"));
    }

    /** The groove for the fork stands aside where a rim takes the middle. */
    static double grooveAside(Sleeve sleeve) {
        return sleeve.rim().isPresent() ? -18 : 0;
    }

    static double grooveHalf(Sleeve sleeve) {
        return sleeve.rim().isPresent() ? 3.5 : 6;
    }

    Figure clutchingTeeth(ClutchingTeeth teeth) {
        int way = toSleeve(teeth.gear(), teeth.sleeve());
        double from = plan.x(teeth.gear()) + way * plan.half(teeth.gear());
        double outer = plan.hubRadius() + TEETH_PROUD;
        Box box = between(from, from + way * Sizes.CLUTCHING_TEETH, plan.y(teeth.gear()), outer);
        double inner = Math.max(bore(teeth.gear()) + Sizes.NEEDLE_GAP, outer - TEETH_DEEP - TEETH_PROUD);
        return new Figure(teeth, box, Ink.CLUTCHING_TEETH, svg -> {
            svg.path(GearFigures.halves(box, inner), "class", "body");
            Pen cuts = new Pen();
            for (int side : new int[] {-1, 1}) {
                double tip = box.y() + side * outer;
                cuts.move(box.left(), tip - side * 3).across(box.right());
                cuts.move(box.left(), tip - side * 6).across(box.right());
            }
            svg.path(cuts, "class", "hatch", "fill", "none", "stroke-width", 0.8);
        });
    }

    Figure ring(BlockingRing ring) {
        int way = toSleeve(ring.gear(), ring.sleeve());
        double from = plan.x(ring.gear()) + way * (plan.half(ring.gear()) + Sizes.CLUTCHING_TEETH + 2);
        double to = from + way * Sizes.RING;
        double y = plan.y(ring.gear());
        double outer = plan.hubRadius() + TEETH_PROUD;
        double inner = Math.max(bore(ring.gear()) + 2, outer - TEETH_DEEP - TEETH_PROUD);
        Pen pen = new Pen();
        for (int side : new int[] {-1, 1}) {
            // Its bore is a cone, wide toward the gear.
            pen.move(from, y + side * outer)
                    .across(to)
                    .upDown(y + side * inner)
                    .line(from, y + side * (inner + 5))
                    .close();
        }
        Box box = between(from, to, y, outer);
        return new Figure(ring, box, Ink.RING, svg -> svg.path(pen, "class", "body"));
    }

    /** A dog ring: a plate on its shaft, or on a bracket in the case. */
    Figure dogRing(DogRing dogs) {
        double x = plan.x(dogs.id());
        double y = plan.y(dogs.id());
        double outer = plan.hubRadius() + TEETH_PROUD;
        Shaft shaft = plan.layout().shaft(dogs.shaft());
        boolean hangs = shaft.held() || new ShaftShape(plan, shaft).hangs(dogs.id());
        double inner = hangs
                ? outer - TEETH_DEEP
                : plan.isHollow(dogs.shaft(), x) ? Math.min(plan.shaftRadius(dogs.shaft(), x), outer - 6) : 0;
        Box box = Box.about(x, y, plan.half(dogs.id()), outer);
        List<Box> covers = inner == 0
                ? List.of(box)
                : List.of(
                        new Box(box.left(), box.top(), box.right(), y - inner),
                        new Box(box.left(), y + inner, box.right(), box.bottom()));
        return new Figure(
                dogs,
                box,
                Ink.CLUTCHING_TEETH,
                covers,
                svg -> svg.path(inner == 0 ? Pen.around(box) : GearFigures.halves(box, inner), "class", "body"));
    }

    private double bore(String of) {
        return plan.shaftRadius(Coaxial.carrier(plan.layout(), of), plan.x(of));
    }

    /** To the rear is 1. */
    private int toSleeve(String gear, String sleeve) {
        return plan.restX(sleeve) > plan.restX(gear) ? 1 : -1;
    }

    private static Box between(double x, double otherX, double y, double halfHeight) {
        return new Box(Math.min(x, otherX), y - halfHeight, Math.max(x, otherX), y + halfHeight);
    }
}
