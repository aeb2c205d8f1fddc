package org.layshaft.web.drawing;

import java.util.List;

/** What lines, arrow heads and outlines mean, in rows at the foot. */
final class Key {
    private static final double SIZE = 13;
    private static final double ROW = 24;
    private static final double SAMPLE = 34;
    private static final double BETWEEN = 22;

    private final Svg svg;
    private final Box canvas;
    private double x;
    private double y;

    private Key(Svg svg, Box canvas) {
        this.svg = svg;
        this.canvas = canvas;
        this.x = canvas.left() + BETWEEN;
        this.y = canvas.bottom() + ROW / 2;
    }

    /** Writes below this, {@code driver} being what turns the input, and returns what is then covered. */
    static Box below(Svg svg, Box canvas, String driver, boolean withLinks) {
        Key key = new Key(svg, canvas);
        svg.open("g", "class", "key", "aria-hidden", "true", "pointer-events", "none");
        key.power();
        key.turning("turns as the " + driver + " does", true);
        key.turning("turns the other way", false);
        key.outline("stands still", Bodies.State.STANDS_STILL);
        key.outline("not driven", Bodies.State.NOT_DRIVEN);
        if (withLinks) {
            key.link();
        }
        svg.close();
        return new Box(canvas.left(), canvas.top(), canvas.right(), key.y + ROW);
    }

    private void power() {
        start("carries power");
        svg.path(Pen.at(x, y).across(x + 22), "class", "power-line", "stroke", Ink.POWER, "stroke-width", 3.5);
        Pen head = new Pen();
        Heads.solid(head, x + 20, y, 1, 0, 12);
        svg.path(head, "class", "power-head", "fill", Ink.POWER);
        say("carries power");
    }

    private void turning(String says, boolean asEngine) {
        start(says);
        Pen head = new Pen();
        Heads.solid(head, x + 20, y, 1, 0, 11);
        svg.path(Pen.at(x, y).across(x + 16), "class", "turning-line", "stroke", Ink.LINE, "stroke-width", 2.2);
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
        say(says);
    }

    private void outline(String says, Bodies.State state) {
        start(says);
        svg.open(
                "g",
                "class",
                state.word(),
                "fill",
                Ink.STILL,
                "stroke",
                Ink.STILL_LINE,
                "stroke-dasharray",
                PartElements.dashes(state));
        svg.rect(Box.about(x + 13, y, 13, 7), "class", "body", "stroke-width", 1.3);
        svg.close();
        say(says);
    }

    private void link() {
        start("meshes with");
        svg.path(
                Pen.at(x, y).across(x + 26),
                "class",
                "mesh-link",
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.6,
                "stroke-dasharray",
                "6 4");
        say("meshes with");
    }

    /** Goes to a new row where this one is full. */
    private void start(String says) {
        if (x + SAMPLE + label(says).width() > canvas.right()) {
            x = canvas.left() + BETWEEN;
            y += ROW;
        }
    }

    private void say(String says) {
        svg.say("text", says, "class", "note", "x", x + SAMPLE, "y", y + SIZE / 3, "font-size", SIZE, "fill", Ink.LINE);
        x += SAMPLE + label(says).width() + BETWEEN;
    }

    private static Label label(String says) {
        return new Label(List.of(says), SIZE, "note");
    }
}
