package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Sleeve;

/** Marks laid over the figures: a crossed ring and a name plate on faulty parts, a dashed ring round parts spoken of. */
final class Marks {
    private static final double MEANT_ROOM = 8;
    private static final double FAULT_RADIUS = 18;
    private static final double[][] WAYS = {{0, -1}, {0, 1}, {1, 0}, {-1, 0}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}};

    private final View view;
    private final Surroundings surroundings;
    private final Figures figures;

    Marks(View view, Surroundings surroundings, Figures figures) {
        this.view = view;
        this.surroundings = surroundings;
        this.figures = figures;
    }

    /** A part's box with the marks on it. */
    Box around(Part part, Box box) {
        Box withRing = view.meantParts().contains(part.id()) ? box.grown(MEANT_ROOM + 2) : box;
        return view.faultyParts().contains(part.id()) ? withRing.with(crossed(part, box)) : withRing;
    }

    void write(Svg svg, Room room) {
        svg.open("g", "class", "marks", "aria-hidden", "true", "pointer-events", "none");
        figures.all().stream()
                .filter(figure -> view.meantParts().contains(figure.part().id()))
                .forEach(figure -> meant(svg, figure));
        List<Figure> faulty = figures.all().stream()
                .filter(figure -> view.faultyParts().contains(figure.part().id()))
                .toList();
        faulty.forEach(figure -> room.take(crossed(figure.part(), figure.box())));
        faulty.forEach(figure -> plate(svg, figure, room));
        faulty.forEach(figure -> cross(svg, crossed(figure.part(), figure.box())));
        svg.close();
    }

    private static void meant(Svg svg, Figure figure) {
        Box box = figure.box().grown(MEANT_ROOM);
        svg.rect(box, "class", "meant-halo", "rx", 12.0, "fill", "none", "stroke", Ink.PAPER, "stroke-width", 6.0);
        svg.rect(
                box,
                "class",
                "meant-ring",
                "rx",
                12.0,
                "fill",
                "none",
                "stroke",
                Ink.MEANT,
                "stroke-width",
                3.0,
                "stroke-dasharray",
                "10 5");
    }

    /** Where the cross goes: on the teeth of a gear rather than on the shaft in its middle. */
    private static Box crossed(Part part, Box box) {
        boolean roundShaft = part instanceof Gear
                || part instanceof Sleeve
                || part instanceof ClutchingTeeth
                || part instanceof BlockingRing;
        double y = roundShaft ? box.top() + Math.min(FAULT_RADIUS, box.height() / 2) : box.y();
        return Box.about(box.x(), y, FAULT_RADIUS, FAULT_RADIUS);
    }

    private static void cross(Svg svg, Box box) {
        double x = box.x();
        double y = box.y();
        double arm = FAULT_RADIUS * 0.66;
        Pen cross = Pen.at(x - arm, y - arm)
                .line(x + arm, y + arm)
                .move(x + arm, y - arm)
                .line(x - arm, y + arm);
        svg.leaf(
                "circle",
                "class",
                "fault-plate",
                "cx",
                x,
                "cy",
                y,
                "r",
                FAULT_RADIUS,
                "fill",
                Ink.PAPER,
                "fill-opacity",
                0.75,
                "stroke",
                Ink.FAULT,
                "stroke-width",
                3.0);
        svg.path(cross, "class", "fault-cross", "fill", "none", "stroke", Ink.FAULT, "stroke-width", 4.0);
    }

    private void plate(Svg svg, Figure figure, Room room) {
        Box cross = crossed(figure.part(), figure.box());
        Label label =
                new Label(List.of(view.told().word().apply(figure.part().name()) + " faulty"), 13.5, "fault-name");
        List<Box> wishes = new ArrayList<>();
        for (double away = 0; away < 120; away += 10) {
            for (double[] way : WAYS) {
                double x = cross.x() + way[0] * (FAULT_RADIUS + label.width() / 2 + 8 + away);
                double y = cross.y() + way[1] * (FAULT_RADIUS + label.height() / 2 + 8 + away);
                wishes.add(
                        surroundings.inside(label.box(x, y - label.height() / 2).grown(4)));
            }
        }
        Box place = room.takeBest(wishes);
        Point from = place.nearest(cross.x(), cross.y());
        svg.path(
                Pen.at(from.x(), from.y()).line(cross.x(), cross.y()),
                "class",
                "fault-leader",
                "fill",
                "none",
                "stroke",
                Ink.FAULT,
                "stroke-width",
                1.5);
        svg.rect(place, "class", "fault-plate", "rx", 3.0, "fill", Ink.PAPER, "stroke", Ink.FAULT, "stroke-width", 1.5);
        label.write(svg, place.grown(-4));
    }
}
