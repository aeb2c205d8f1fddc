package org.layshaft.web.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes a drawing fit for a copier: what carries power is hatched, other bodies are white or one grey, all lines black. */
final class BlackAndWhite {
    private static final Pattern COLOUR = Pattern.compile("(fill|stroke)=\"(#[0-9a-f]{6})\"");
    private static final String BLACK = "#000000";
    private static final String WHITE = "#ffffff";
    private static final String GREY = "#e0e0e0";

    private BlackAndWhite() {}

    /** The same drawing with its colours told otherwise. */
    static String of(String svg, String idPrefix) {
        Map<String, String> fills = new LinkedHashMap<>();
        for (Ink ink : Ink.values()) {
            fills.put(ink.fill(), WHITE);
        }
        fills.put(Ink.FIXED.fill(), GREY);
        fills.put(Ink.SHAFT.fill(), GREY);
        fills.put(Ink.PAPER, WHITE);
        fills.put(Ink.CASE, WHITE);
        fills.put(Ink.STILL, WHITE);
        fills.put(Ink.CARRYING, "url(#" + idPrefix + "carrying)");
        fills.put(Ink.CARRYING_DEEP, "url(#" + idPrefix + "carrying)");
        Matcher colours = COLOUR.matcher(svg);
        StringBuilder out = new StringBuilder();
        while (colours.find()) {
            boolean fill = colours.group(1).equals("fill");
            String colour = colours.group(2);
            boolean light = colour.equals(Ink.PAPER) || colour.equals(Ink.CASE);
            String told = fill ? fills.getOrDefault(colour, BLACK) : light ? WHITE : BLACK;
            colours.appendReplacement(out, Matcher.quoteReplacement(colours.group(1) + "=\"" + told + '"'));
        }
        return colours.appendTail(out).toString();
    }

    /** The hatching of what carries power; a drawing in colours has it as well, for print. */
    static void pattern(Svg svg, String idPrefix) {
        svg.open("defs");
        svg.open("pattern", "id", idPrefix + "carrying", "width", 6.0, "height", 6.0, "patternUnits", "userSpaceOnUse");
        svg.leaf("rect", "width", 6.0, "height", 6.0, "fill", "white");
        svg.leaf("path", "d", "M-1 1L1 -1M0 6L6 0M5 7L7 5", "fill", "none", "stroke", "black", "stroke-width", 1.1);
        svg.close().close();
    }
}
