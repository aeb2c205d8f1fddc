package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Layout;

/**
 * A box drawn from the side, the clutch end on the left, or from the end, along its shafts. Thread-safe; the same layout
 * and view give the same text.
 */
public final class Drawing {
    private static final double MARGIN = 14;
    /** What is wider than this keeps its names legible by a least width on the screen, and may be scrolled. */
    private static final double WIDE = 1150;

    private static final double VERY_WIDE = 1600;

    private final Layout layout;
    private final View view;
    private final Plan plan;
    private final Surroundings around;
    private final Figures figures;

    private Drawing(Layout layout, View view) {
        this.layout = layout;
        this.view = view;
        this.plan = new Plan(layout, view.stance());
        this.around = Surroundings.of(plan);
        this.figures = new Figures(plan, around);
    }

    public static Drawing of(Layout layout, View view) {
        return new Drawing(layout, view);
    }

    /** An element to stand in a page that has {@code drawing.css}. */
    public String svg() {
        return write(false);
    }

    /** A file of its own, with its size, for any viewer and for print. */
    public String standalone() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + write(true);
    }

    private String write(boolean alone) {
        String written = view.from() == View.From.END ? new EndView(layout, view, plan).write(alone) : side(alone);
        return view.ink() == View.Printing.BLACK ? BlackAndWhite.of(written, view.idPrefix()) : written;
    }

    private String side(boolean alone) {
        PowerPath path = view.motion().map(motion -> PowerPath.of(plan, motion)).orElse(new PowerPath(List.of()));
        InWords words = new InWords(layout, view);
        Svg picture = new Svg();
        Room room = new Room(figures.all().stream()
                .flatMap(figure -> figure.covers().stream())
                .toList());
        new SelectorFigures(plan, around).stems().forEach(room::take);
        paint(picture, room, words, path);
        Box canvas = room.extent().grown(MARGIN);
        if (view.motion().isPresent()) {
            canvas = Key.below(picture, canvas, InWords.driver(layout), new MeshLinks(plan, figures).any());
        }
        Svg svg = new Svg();
        String kind = canvas.width() > VERY_WIDE
                ? "drawing wide very-wide"
                : canvas.width() > WIDE ? "drawing wide" : "drawing";
        SvgHead.open(svg, layout, view, canvas, kind, alone);
        SvgHead.say(svg, view, words.title(), words.description(path));
        LockedMark.pattern(svg, view.idPrefix());
        BlackAndWhite.pattern(svg, view.idPrefix());
        if (alone) {
            svg.rect(canvas, "fill", Ink.PAPER);
        }
        return svg.append(picture).close().toString();
    }

    private void paint(Svg svg, Room room, InWords words, PowerPath path) {
        Optional<Bodies> bodies = view.motion().map(motion -> new Bodies(layout, motion));
        new Backdrop(plan, around).write(svg, room);
        PartElements elements = new PartElements(view, words, path, bodies);
        figures.all().forEach(figure -> elements.write(svg, figure));
        svg.open("g", "class", "overlay", "pointer-events", "none");
        bodies.ifPresent(all -> new Rolling(plan, figures, all).write(svg));
        bodies.ifPresent(all -> new TurningArrows(plan, around, figures, all).write(svg, room));
        new MeshLinks(plan, figures).write(svg, room);
        new PowerLines(new PathLine(plan, around, figures)).write(svg, path);
        svg.close();
        Marks marks = new Marks(view, around, figures);
        marks.write(svg, room);
        new Labels(plan, around, figures, marks, room, view.told().word()).write(svg);
        view.motion().ifPresent(motion -> new LockedMark(around, view.idPrefix()).write(svg, room, motion.outcome()));
        new Handles(plan, figures, view, room).write(svg);
        room.take(around.caseBox());
        room.take(around.steady());
    }
}
