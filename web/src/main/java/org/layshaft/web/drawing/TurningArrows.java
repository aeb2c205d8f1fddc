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
    private static final double TO_WHEEL = 34;

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
        layout.all(Shaft.class)
                .filter(shaft -> !shaft.held() && shaft.carriedBy().isEmpty())
                .forEach(shaft -> {
                    Box bar = figures.box(shaft.id());
                    boolean input = shaft.id().equals(layout.input());
                    boolean front = input || atFront(shaft);
                    at(svg, room, shaft, front ? Side.FRONT : Side.REAR, usual(shaft, bar, input), bar.y());
                });
        layout.all(HalfShaft.class).forEach(half -> {
            Box bar = figures.box(half.id());
            if (plan.lines().across(half.differential()).isPresent()) {
                boolean down = bar.y() > plan.carrierY(half.differential());
                across(svg, room, half, bar.x(), down ? bar.bottom() - TO_WHEEL : bar.top() + TO_WHEEL);
                return;
            }
            boolean front = bar.x() < plan.x(half.differential());
            at(svg, room, half, front ? Side.FRONT : Side.REAR, front ? bar.left() + 42 : bar.right() - 46, bar.y());
        });
    }

    private boolean atFront(Shaft shaft) {
        return plan.exits().leaves(shaft) && plan.exits().end(shaft) == Side.FRONT;
    }

    private double usual(Shaft shaft, Box bar, boolean input) {
        if (input) {
            return around.caseBox().left() - 26;
        }
        if (plan.exits().leaves(shaft)) {
            return atFront(shaft) ? bar.left() + 34 : bar.right() - 34;
        }
        return isCrowded(shaft) ? freest(shaft, bar) : bar.right() - 10;
    }

    /** Whether its rear end may lie inside another shaft, or under what sits on one. */
    private boolean isCrowded(Shaft shaft) {
        return plan.lines().shafts(plan.lines().ofCarrier(shaft.id())).size() > 2
                || plan.lines().axlesAcross().stream()
                        .anyMatch(axle -> shaft.along().contains(axle.pinion()));
    }

    /** Where along the shaft an arrow covers least of what is not the shaft. */
    private double freest(Shaft shaft, Box bar) {
        List<Box> others = figures.all().stream()
                .filter(figure -> !figure.part().equals(shaft))
                .flatMap(figure -> figure.covers().stream())
                .toList();
        double best = bar.right() - 10;
        double least = Double.MAX_VALUE;
        for (double x = bar.right() - 10; x > bar.left() + 6; x -= 4) {
            Box box = Box.about(x + 3, bar.y(), 11, REACH + 2);
            double covered = others.stream().mapToDouble(box::shared).sum();
            if (covered < least - 1) {
                least = covered;
                best = x;
            }
        }
        return best;
    }

    /** Turned with its shaft: the upper side of a wheel that drives forward goes toward the front. */
    private void across(Svg svg, Room room, HalfShaft half, double x, double y) {
        bodies.speed(half).filter(speed -> !speed.isZero()).ifPresent(speed -> {
            boolean asEngine = open(svg, half, speed);
            svg.open("g", "transform", "rotate(90 " + Svg.number(x) + " " + Svg.number(y) + ")");
            arrow(svg, x, y, asEngine);
            svg.close();
            Label label = new Label(List.of(times(speed)), 12, "speed");
            label.write(svg, room.take(label.box(x + REACH + 8 + label.width() / 2, y - label.height() / 2)));
            svg.close();
        });
        room.take(Box.about(x, y + 4, REACH + 4, 12));
    }

    private boolean open(Svg svg, Part body, Fraction speed) {
        boolean asEngine = speed.signum() > 0;
        svg.open("g", "class", asEngine ? "turning as-engine" : "turning other-way", "data-turns", body.id());
        svg.say("title", InWords.turning(plan.layout(), body.name(), speed));
        return asEngine;
    }

    private void at(Svg svg, Room room, Part body, Side end, double x, double y) {
        bodies.speedAt(body, end).filter(speed -> !speed.isZero()).ifPresent(speed -> {
            arrow(svg, x, y, open(svg, body, speed));
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
