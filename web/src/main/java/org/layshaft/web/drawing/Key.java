package org.layshaft.web.drawing;

/** What lines and arrow heads mean, at the foot. */
final class Key {
    static final double HEIGHT = 26;

    private Key() {}

    static void write(Svg svg, Box canvas) {
        double y = canvas.bottom() - 18;
        double x = canvas.left() + 24;
        svg.open("g", "class", "key", "aria-hidden", "true", "pointer-events", "none", "font-size", 13.0, "fill", Ink.LINE);
        svg.path(Pen.at(x, y).across(x + 24), "class", "power-line", "stroke", Ink.POWER, "stroke-width", 3.5);
        Pen head = new Pen();
        Heads.solid(head, x + 24, y, 1, 0, 12);
        svg.path(head, "class", "power-head", "fill", Ink.POWER);
        text(svg, "carries power", x + 38, y);
        sample(svg, "turns as the engine does", x + 152, y, true);
        sample(svg, "turns the other way", x + 352, y, false);
        box(svg, "stands-still", "5 2.5", x + 520, y);
        text(svg, "stands still", x + 554, y);
        box(svg, "not-driven", "1.5 2.5", x + 652, y);
        text(svg, "not driven", x + 686, y);
        svg.close();
    }

    private static void sample(Svg svg, String says, double x, double y, boolean asEngine) {
        Pen head = new Pen();
        Heads.solid(head, x + 22, y, 1, 0, 11);
        svg.path(Pen.at(x, y).across(x + 18), "class", "turning-line", "stroke", Ink.LINE, "stroke-width", 2.2);
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
        text(svg, says, x + 34, y);
    }

    private static void box(Svg svg, String state, String dashes, double x, double y) {
        svg.open("g", "class", state, "fill", Ink.STILL, "stroke", Ink.STILL_LINE, "stroke-dasharray", dashes);
        svg.rect(Box.about(x + 13, y, 13, 7), "class", "body", "stroke-width", 1.3);
        svg.close();
    }

    private static void text(Svg svg, String says, double x, double y) {
        svg.say("text", says, "class", "note", "x", x, "y", y + 4.5);
    }
}
