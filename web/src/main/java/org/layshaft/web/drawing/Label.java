package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A few short lines of text, centred.
 *
 * @param size of the font
 * @param style class name of its look
 */
record Label(List<String> lines, double size, String style) {
    private static final double LEADING = 1.15;
    /** The mean width of a letter of a plain sans-serif font, to its size. */
    private static final double LETTER = 0.56;

    /** Breaks between words so that lines stay within this width where words allow. */
    static Label wrapped(String text, double width, double size, String style) {
        List<String> lines = new ArrayList<>();
        for (String word : text.split(" ")) {
            int last = lines.size() - 1;
            if (last >= 0 && wide(lines.get(last) + " " + word, size) <= width) {
                lines.set(last, lines.get(last) + " " + word);
            } else {
                lines.add(word);
            }
        }
        return new Label(lines, size, style);
    }

    private static double wide(String text, double size) {
        return text.length() * size * LETTER;
    }

    double width() {
        int longest = 0;
        for (String line : lines) {
            longest = Math.max(longest, line.length());
        }
        return longest * size * LETTER;
    }

    double height() {
        return lines.size() * size * LEADING;
    }

    Box box(double x, double top) {
        return new Box(x - width() / 2, top, x + width() / 2, top + height());
    }

    void write(Svg svg, Box box) {
        svg.open(
                "text",
                "class",
                style,
                "font-size",
                size,
                "text-anchor",
                "middle",
                "fill",
                Ink.LINE,
                "stroke",
                Ink.CASE,
                "stroke-width",
                3.0,
                "stroke-linejoin",
                "round",
                "paint-order",
                "stroke");
        for (int at = 0; at < lines.size(); at++) {
            double y = box.top() + (at + 0.82) * size * LEADING;
            svg.say("tspan", lines.get(at), "x", box.x(), "y", y);
        }
        svg.close();
    }
}
