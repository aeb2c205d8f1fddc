package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Shaft;

/** What holds rings and dog rings in the case: a bracket on either side of the axis, hatched where it is fast. */
record CaseFigures(Plan plan) {
    private static final double BRACKET = 9;
    private static final double BEYOND_SLEEVE = 13;
    private static final double HATCH = 6;

    Figure seat(Shaft held) {
        List<Box> brackets = new ArrayList<>();
        held.along().forEach(id -> brackets.addAll(brackets(id)));
        Pen pen = new Pen();
        brackets.forEach(pen::box);
        Box box = brackets.stream().findFirst().orElseGet(() -> Box.about(0, plan.carrierY(held.id()), 8, 8));
        return new Figure(held, box, Ink.SHAFT, brackets.isEmpty() ? List.of(box) : brackets, svg -> {
            svg.path(pen, "class", "body");
            svg.path(hatch(brackets, plan.carrierY(held.id())), "class", "ground", "fill", "none", "stroke-width", 1.2);
        });
    }

    private List<Box> brackets(String id) {
        double x = plan.x(id);
        double y = plan.y(id);
        double half = plan.half(id);
        Optional<Gear> gear = plan.layout().find(Gear.class, id);
        double foot = gear.map(plan::outer).orElse(plan.hubRadius() + 2);
        double top = gear.isPresent() ? foot + BRACKET : plan.sleeveRadius() + BEYOND_SLEEVE;
        return List.of(new Box(x - half, y - top, x + half, y - foot), new Box(x - half, y + foot, x + half, y + top));
    }

    private static Pen hatch(List<Box> brackets, double axis) {
        Pen pen = new Pen();
        for (Box bracket : brackets) {
            double way = bracket.y() < axis ? -1 : 1;
            double edge = way < 0 ? bracket.top() : bracket.bottom();
            double from = bracket.left() - HATCH;
            double to = bracket.right() + HATCH;
            pen.move(from, edge).across(to);
            for (double x = from; x < to - 1; x += HATCH) {
                pen.move(x, edge).line(x + HATCH, edge + way * HATCH);
            }
        }
        return pen;
    }
}
