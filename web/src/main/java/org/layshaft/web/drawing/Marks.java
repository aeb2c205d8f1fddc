package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.engine.api.Motion;

/** Marks laid over the figures: faults, parts spoken of, a locked box. */
final class Marks {
    private static final double RING = 8;

    private final View view;
    private final Surroundings around;
    private final Figures figures;

    Marks(View view, Surroundings around, Figures figures) {
        this.view = view;
        this.around = around;
        this.figures = figures;
    }

    void write(Svg svg, Room room) {
        svg.open("g", "class", "marks", "aria-hidden", "true", "pointer-events", "none");
        figures.all().stream()
                .filter(figure -> view.meantParts().contains(figure.part().id()))
                .forEach(figure -> meant(svg, figure));
        figures.all().stream()
                .filter(figure -> view.faultyParts().contains(figure.part().id()))
                .forEach(figure -> faulty(svg, figure, room));
        svg.close();
    }

    private static void meant(Svg svg, Figure figure) {
        Box box = figure.box().grown(RING);
        svg.rect(box, "class", "meant-halo", "rx", 12.0, "fill", "none", "stroke", Ink.PAPER, "stroke-width", 6.0);
        svg.rect(box, "class", "meant-ring", "rx", 12.0, "fill", "none", "stroke", Ink.MEANT, "stroke-width", 3.0,
                "stroke-dasharray", "10 5");
    }

    private static void faulty(Svg svg, Figure figure, Room room) {
        Box box = figure.box();
        double x = box.x();
        double y = box.y();
        Pen crack = Pen.at(x - 13, y - 13).line(x + 13, y + 13).move(x + 13, y - 13).line(x - 13, y + 13);
        svg.leaf("circle", "class", "fault-ring", "cx", x, "cy", y, "r", 19.0, "fill", "none", "stroke", Ink.PAPER,
                "stroke-width", 7.0);
        svg.leaf("circle", "class", "fault-ring", "cx", x, "cy", y, "r", 19.0, "fill", "none", "stroke", Ink.FAULT,
                "stroke-width", 3.0);
        svg.path(crack, "class", "fault-halo", "fill", "none", "stroke", Ink.PAPER, "stroke-width", 8.0);
        svg.path(crack, "class", "fault-cross", "fill", "none", "stroke", Ink.FAULT, "stroke-width", 4.0);
        Label label = new Label(List.of(figure.part().name() + " faulty"), 13, "fault-name");
        double half = label.width() / 2 + 26;
        Box place = room.takeBest(List.of(
                label.box(x, y - 40),
                label.box(x, y + 24),
                label.box(x + half, y - 8),
                label.box(x - half, y - 8),
                label.box(x, y - 60),
                label.box(x, y + 44),
                label.box(x, y - 80),
                label.box(x, y + 64)));
        svg.rect(place.grown(3), "class", "fault-plate", "rx", 3.0, "fill", Ink.PAPER, "stroke", Ink.FAULT, "stroke-width",
                1.5);
        label.write(svg, place);
    }

    /** A padlock with what is locked, where it hides least. */
    void outcome(Svg svg, Room room, Motion.Outcome outcome) {
        String says =
                switch (outcome) {
                    case LOCKED -> "locked";
                    case INPUT_HELD -> "input held";
                    case OUTPUT_HELD -> "output held";
                    case DRIVES, NEUTRAL -> "";
                };
        if (says.isEmpty()) {
            return;
        }
        Box gearing = around.gearing();
        svg.rect(around.caseBox(), "class", "locked-hatch", "rx", 14.0, "fill", "url(#" + view.idPrefix() + "hatch)",
                "pointer-events", "none");
        Label label = new Label(List.of(says), 18, "locked-word");
        Box best = null;
        double least = Double.MAX_VALUE;
        for (double y = gearing.top() + 26; y < gearing.bottom() - 20; y += 12) {
            for (double x = gearing.left() + 70; x < gearing.right() - 70; x += 12) {
                Box box = Box.about(x, y, label.width() / 2 + 34, 24);
                if (room.covered(box) < least) {
                    least = room.covered(box);
                    best = box;
                }
            }
        }
        padlock(svg, room.take(best), label);
    }

    private static void padlock(Svg svg, Box box, Label label) {
        double x = box.left() + 26;
        double y = box.y() + 4;
        svg.open("g", "class", "locked", "stroke", Ink.LINE, "stroke-width", 2.5, "pointer-events", "none");
        svg.rect(box, "class", "locked-plate", "rx", 8.0, "fill", Ink.PAPER);
        svg.path(
                Pen.at(x - 7, y - 5).upDown(y - 9).curve(x - 7, y - 18, x, y - 18).curve(x + 7, y - 18, x + 7, y - 9).upDown(
                        y - 5),
                "fill",
                "none");
        svg.rect(Box.about(x, y + 3, 11, 8), "class", "locked-body", "rx", 2.0, "fill", Ink.LINE);
        svg.open("g", "stroke", "none", "font-weight", "bold");
        label.write(svg, label.box(box.x() + 14, box.y() - label.height() / 2));
        svg.close().close();
    }

    static void pattern(Svg svg, String idPrefix) {
        svg.open("defs");
        svg.open("pattern", "id", idPrefix + "hatch", "width", 12.0, "height", 12.0, "patternUnits", "userSpaceOnUse");
        svg.path(Pen.at(0, 12).line(12, 0), "class", "hatch-line", "fill", "none", "stroke", Ink.LINE, "stroke-width", 1.0,
                "stroke-opacity", 0.45);
        svg.close().close();
    }
}
