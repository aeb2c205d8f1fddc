package org.layshaft.web.drawing;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Sleeve;

/**
 * Where marks may run along the rims as the box turns: empty paths that say how fast, how far out and between which edges.
 * They stay empty where no script moves them. Planets and wheels of an axle across have none: seen from the side they do
 * more than roll.
 */
record Rolling(Plan plan, Figures figures, Bodies bodies) {

    void write(Svg svg) {
        figures.all()
                .forEach(figure -> bodies.speed(figure.part())
                        .filter(turns -> !turns.isZero())
                        .ifPresent(turns -> write(svg, figure, turns)));
    }

    private void write(Svg svg, Figure figure, Fraction turns) {
        if (figure.part() instanceof Gear gear && rolls(gear)) {
            double inner = gear.form() == GearForm.INTERNAL ? plan.radius(gear.id()) : 0;
            mark(svg, plan.gearBox(gear.id()), inner, turns);
        } else if (figure.part() instanceof Sleeve) {
            mark(svg, figure.box(), plan.hubRadius(), turns);
        }
    }

    private boolean rolls(Gear gear) {
        return !new Planets(plan.layout()).isPlanet(gear.id())
                && plan.lines().axlesAcross().stream().noneMatch(axle -> axle.joins(gear));
    }

    private static void mark(Svg svg, Box box, double inner, Fraction turns) {
        svg.leaf(
                "path",
                "class",
                "rolling",
                "data-turns",
                turns.toDouble() + "",
                "data-left",
                box.left(),
                "data-right",
                box.right(),
                "data-axis",
                box.y(),
                "data-outer",
                box.height() / 2,
                "data-inner",
                inner,
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                2.0,
                "stroke-opacity",
                0.5);
    }
}
