package org.layshaft.web.chart;

import org.layshaft.web.drawing.Svg;

/** How every figure begins: one picture with a name and a description. */
final class Frame {
    private Frame() {}

    static Svg open(String id, String title, String description, double width, double height) {
        Svg svg = new Svg();
        svg.open(
                "svg",
                "class",
                "chart",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 %s %s".formatted(Svg.number(width), Svg.number(height)),
                "role",
                "img",
                "aria-labelledby",
                id + "-title",
                "aria-describedby",
                id + "-desc",
                "font-family",
                "system-ui, sans-serif",
                "font-size",
                13);
        svg.say("title", title, "id", id + "-title");
        svg.say("desc", description, "id", id + "-desc");
        return svg;
    }
}
