package org.layshaft.web.drawing;

import java.util.Optional;
import org.layshaft.kb.layout.Layout;

/** A box drawn from the side, the clutch end on the left. Thread-safe; the same layout and view give the same text. */
public final class Drawing {
    private static final double MARGIN = 14;

    private final Layout layout;
    private final View view;
    private final Plan plan;
    private final Surroundings around;
    private final Figures figures;

    private Drawing(Layout layout, View view) {
        this.layout = layout;
        this.view = view;
        this.plan = new Plan(layout, view.stance());
        this.around = new Surroundings(plan.gearing(), layout.gate().planes());
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
        Svg svg = new Svg();
        InWords words = new InWords(layout, view);
        PowerPath path = view.motion()
                .map(motion -> PowerPath.of(plan, motion))
                .orElse(new PowerPath(java.util.List.of()));
        Optional<Bodies> bodies = view.motion().map(motion -> new Bodies(layout, motion));
        Box canvas = canvas();
        boolean links = layout.parts().keySet().stream()
                .anyMatch(part -> view.linkOf().apply(part).isPresent());
        String title = view.idPrefix() + "title";
        String description = view.idPrefix() + "desc";
        svg.open(
                "svg",
                "xmlns",
                alone ? "http://www.w3.org/2000/svg" : null,
                "class",
                "drawing",
                "viewBox",
                Svg.number(canvas.left()) + " " + Svg.number(canvas.top()) + " " + Svg.number(canvas.width()) + " "
                        + Svg.number(canvas.height()),
                "width",
                alone ? canvas.width() : null,
                "height",
                alone ? canvas.height() : null,
                "role",
                links ? "group" : "img",
                "aria-labelledby",
                title,
                "aria-describedby",
                description,
                "font-family",
                "system-ui, 'Liberation Sans', Arial, sans-serif",
                "stroke-linecap",
                "butt");
        svg.say("title", words.title(), "id", title);
        svg.say("desc", words.description(path), "id", description);
        Marks.pattern(svg, view.idPrefix());
        if (alone) {
            svg.rect(canvas, "fill", Ink.PAPER);
        }
        Room room = new Room(figures.all().stream().map(Figure::box).toList());
        new Backdrop(plan, around).write(svg, room);
        PartElements elements = new PartElements(view, words, bodies);
        figures.all().forEach(figure -> elements.write(svg, figure));
        overlay(svg, path, bodies, canvas, room);
        svg.close();
        return svg.toString();
    }

    private void overlay(Svg svg, PowerPath path, Optional<Bodies> bodies, Box canvas, Room room) {
        svg.open("g", "class", "overlay", "pointer-events", "none");
        bodies.ifPresent(all -> new TurningArrows(plan, around, figures, all).write(svg, room));
        new MeshLinks(plan, figures).write(svg, room);
        PathLine line = new PathLine(plan, around, figures);
        path.ways().forEach(way -> line.write(svg, way));
        svg.close();
        new Labels(plan, around, figures, room).write(svg);
        Marks marks = new Marks(view, around, figures);
        view.motion().ifPresent(motion -> marks.outcome(svg, room, motion.outcome()));
        marks.write(svg, room);
        bodies.ifPresent(all -> Key.write(svg, canvas));
    }

    private Box canvas() {
        Box all = Box.of(figures.all().stream().map(Figure::box).toList());
        double foot = all.bottom() + 52;
        return new Box(
                Math.min(all.left(), around.engineX() - 40),
                all.top() - 30,
                Math.max(all.right(), around.outputX() + 62),
                foot + Key.HEIGHT).grown(MARGIN);
    }
}
