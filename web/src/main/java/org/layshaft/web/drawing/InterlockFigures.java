package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Rail;

/** What keeps rails apart, drawn where it stands between them, in a frame that is the interlock as a whole. */
final class InterlockFigures {
    private static final double RAIL_HALF = 5;
    private static final double BEYOND = 12;

    private final Plan plan;
    private final Surroundings around;

    InterlockFigures(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
    }

    Stream<Figure> all() {
        return Stream.concat(
                plan.layout().all(Interlock.class).map(this::frame),
                plan.layout().all(InterlockPiece.class).map(this::piece));
    }

    private Figure frame(Interlock interlock) {
        // Where there is nothing to keep apart, it is small.
        Box box = interlock.rails().size() > 1 ? over(interlock.rails(), 20, 17) : over(interlock.rails(), 8, 11);
        return new Figure(
                interlock,
                box,
                Ink.SELECTOR_SMALL,
                svg -> svg.rect(
                        box,
                        "class",
                        "frame",
                        "rx",
                        6.0,
                        "fill",
                        "none",
                        "stroke",
                        interlock.rails().isEmpty() ? "none" : null,
                        "stroke-width",
                        1.0,
                        "stroke-dasharray",
                        "4 3",
                        "pointer-events",
                        "all"));
    }

    private Figure piece(InterlockPiece piece) {
        return switch (piece.form()) {
            case PLUNGER -> plunger(piece);
            case PIN -> pin(piece);
            case PLATE -> shutter(piece, 0);
            case COLLAR, DRUM -> shutter(piece, 8);
        };
    }

    private Figure plunger(InterlockPiece piece) {
        double x = around.interlockX();
        double[] heights =
                piece.rails().stream().mapToDouble(around::railY).sorted().toArray();
        Box box = new Box(x - 7, heights[0] + RAIL_HALF - 2, x + 7, heights[heights.length - 1] - RAIL_HALF + 2);
        return new Figure(piece, box, Ink.SELECTOR_SMALL, svg -> {
            target(svg, box);
            svg.rect(box, "class", "body", "rx", 7.0);
        });
    }

    /** A pin goes with its rail. */
    private Figure pin(InterlockPiece piece) {
        Rail rail = plan.layout().the(Rail.class, piece.rails().get(0));
        double x = around.interlockX() + plan.strokes().displacement(rail, plan.stance());
        Box box = Box.about(x, around.railY(rail.id()), 3, RAIL_HALF + 1);
        return new Figure(piece, box, Ink.RING, svg -> {
            svg.rect(
                    Box.about(box.x(), box.y(), 12, 8),
                    "class",
                    "target",
                    "fill",
                    "none",
                    "stroke",
                    "none",
                    "pointer-events",
                    "all");
            svg.rect(box, "class", "body", "rx", 1.5);
        });
    }

    /** A plate or collar, with a window at each rail. */
    private Figure shutter(InterlockPiece piece, double rounding) {
        Box box = over(piece.rails(), 9, BEYOND);
        return new Figure(piece, box, Ink.SELECTOR_SMALL, svg -> {
            target(svg, box);
            Pen pen = Pen.around(box);
            piece.rails().forEach(rail -> pen.box(Box.about(box.x(), around.railY(rail), 5, RAIL_HALF + 2)));
            svg.path(pen, "class", "body", "fill-rule", "evenodd", "stroke-linejoin", rounding > 0 ? "round" : null);
        });
    }

    private static void target(Svg svg, Box box) {
        svg.rect(
                Box.about(box.x(), box.y(), 12, Math.max(12, box.height() / 2)),
                "class",
                "target",
                "fill",
                "none",
                "stroke",
                "none",
                "pointer-events",
                "all");
    }

    private Box over(List<String> rails, double halfWidth, double beyond) {
        double x = around.interlockX();
        double none = around.aboveRails();
        double top = rails.stream().mapToDouble(around::railY).min().orElse(none);
        double foot = rails.stream().mapToDouble(around::railY).max().orElse(none);
        return new Box(x - halfWidth, top - beyond, x + halfWidth, foot + beyond);
    }
}
