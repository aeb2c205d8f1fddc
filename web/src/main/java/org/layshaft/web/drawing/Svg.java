package org.layshaft.web.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG elements, escaping all text. Attributes are given as name, value, name, value; a null value is left out. */
public final class Svg {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    public Svg open(String element, Object... attributes) {
        start(element, attributes).append('>');
        open.push(element);
        return this;
    }

    public Svg close() {
        out.append("</").append(open.pop()).append(">\n");
        return this;
    }

    public Svg leaf(String element, Object... attributes) {
        start(element, attributes).append("/>");
        return this;
    }

    /** An element that holds nothing but text. */
    public Svg say(String element, String text, Object... attributes) {
        start(element, attributes).append('>');
        out.append(escaped(text)).append("</").append(element).append('>');
        return this;
    }

    Svg path(Pen pen, Object... attributes) {
        Object[] all = new Object[attributes.length + 2];
        all[0] = "d";
        all[1] = pen;
        System.arraycopy(attributes, 0, all, 2, attributes.length);
        return leaf("path", all);
    }

    Svg rect(Box box, Object... attributes) {
        Object[] all = new Object[attributes.length + 8];
        Object[] sides = {"x", box.left(), "y", box.top(), "width", box.width(), "height", box.height()};
        System.arraycopy(sides, 0, all, 0, sides.length);
        System.arraycopy(attributes, 0, all, sides.length, attributes.length);
        return leaf("rect", all);
    }

    /** Everything that the other has written, as it is. */
    Svg append(Svg other) {
        out.append(other.out);
        return this;
    }

    private StringBuilder start(String element, Object... attributes) {
        out.append('<').append(element);
        for (int at = 0; at < attributes.length; at += 2) {
            Object value = attributes[at + 1];
            if (value != null) {
                String text = value instanceof Double number ? number(number) : escaped(value.toString());
                out.append(' ')
                        .append(attributes[at])
                        .append("=\"")
                        .append(text)
                        .append('"');
            }
        }
        return out;
    }

    /** At most two decimals, with a point, whatever the locale. */
    public static String number(double value) {
        long hundredths = Math.round(value * 100);
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        if (rest == 0) {
            return sign + whole;
        }
        return sign + whole + "." + (rest % 10 == 0 ? "" + rest / 10 : (rest < 10 ? "0" : "") + rest);
    }

    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(allowed(point) ? point : 0xFFFD);
            }
        });
        return safe.toString();
    }

    /** Whether XML 1.0 lets this character stand. */
    private static boolean allowed(int point) {
        return point >= 0x20 && point <= 0xD7FF
                || point == '\t'
                || point == '\n'
                || point >= 0xE000 && point <= 0xFFFD
                || point >= 0x10000;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
