package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;

/** Curved arrows at shaft ends: a solid head turns as the engine does, a hollow head the other way. */
final class TurningArrows {
    private static final double REACH = Sizes.SHAFT_RADIUS + 8;

    private final Plan plan;
    private final Surroundings around;
    private final Figures figures;
    private final Bodies bodies;

    TurningArrows(Plan plan, Surroundings around, Figures figures, Bodies bodies) {
        this.plan = plan;
        this.around = around;
        this.figures = figures;
        this.bodies = bodies;
    }

    void write(Svg svg, Room room) {
        Layout layout = plan.layout();
        layout.all(Shaft.class).filter(shaft -> !shaft.held() && shaft.carriedBy().isEmpty()).forEach(shaft -> {
            Box bar = figures.box(shaft.id());
            double x = shaft.id().equals(layout.input())
                    ? around.caseBox().left() - 26
                    : bar.right() - (layout.outputs().contains(shaft.id()) ? 34 : 10);
            at(svg, room, shaft, shaft.id().equals(layout.input()) ? Side.FRONT : Side.REAR, x, bar.y());
        });
        layout.all(HalfShaft.class).forEach(half -> {
            Box bar = figures.box(half.id());
            boolean front = bar.x() < plan.x(half.differential());
            at(svg, room, half, front ? Side.FRONT : Side.REAR, front ? bar.left() + 42 : bar.right() - 46, bar.y());
        });
    }

    private void at(Svg svg, Room room, Part body, Side end, double x, double y) {
        bodies.speedAt(body, end).filter(speed -> !speed.isZero()).ifPresent(speed -> {
            boolean asEngine = speed.signum() > 0;
            svg.open("g", "class", asEngine ? "turning as-engine" : "turning other-way", "data-turns", body.id());
            svg.say("title", InWords.turning(body.name(), speed));
            arrow(svg, x, y, asEngine);
            Label label = new Label(List.of(times(speed)), 12, "speed");
            label.write(
                    svg,
                    room.takeBest(List.of(
                            label.box(x + 3, y + REACH + 5), label.box(x + 3, y - REACH - 5 - label.height()))));
            svg.close();
        });
        room.take(Box.about(x + 4, y, 12, REACH + 4));
    }

    static void arrow(Svg svg, double x, double y, boolean asEngine) {
        double from = asEngine ? y - REACH : y + REACH;
        double to = asEngine ? y + REACH - 5 : y - REACH + 5;
        Pen arc = Pen.at(x - 3, from).curve(x + 17, y + (asEngine ? 2 : -2), x + 1, to);
        svg.path(arc, "class", "turning-halo", "fill", "none", "stroke", Ink.PAPER, "stroke-width", 5.0);
        svg.path(arc, "class", "turning-line", "fill", "none", "stroke", Ink.LINE, "stroke-width", 2.2);
        Pen head = new Pen();
        Heads.solid(head, x, to + (asEngine ? 2 : -2), -7, asEngine ? 6 : -6, 10);
        svg.path(
                head,
                "class",
                asEngine ? "turning-head solid" : "turning-head hollow",
                "fill",
                asEngine ? Ink.LINE : Ink.PAPER,
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.6);
    }

    static String times(Fraction speed) {
        return "×" + Svg.number(speed.absolute().toDouble());
    }
}
