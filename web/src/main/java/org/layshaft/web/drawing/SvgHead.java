package org.layshaft.web.drawing;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;

/** The element that a drawing is, and what it says of itself. */
final class SvgHead {
    private SvgHead() {}

    /**
     * @param kind its class
     * @param alone whether it is a file of its own
     */
    static void open(Svg svg, Layout layout, View view, Box canvas, String kind, boolean alone) {
        boolean links = layout.parts().keySet().stream()
                .anyMatch(part -> view.linkOf().apply(part).isPresent());
        String viewBox = Stream.of(canvas.left(), canvas.top(), canvas.width(), canvas.height())
                .map(Svg::number)
                .collect(Collectors.joining(" "));
        svg.open(
                "svg",
                "xmlns",
                alone ? "http://www.w3.org/2000/svg" : null,
                "class",
                kind,
                "viewBox",
                viewBox,
                "width",
                alone ? canvas.width() : null,
                "height",
                alone ? canvas.height() : null,
                "role",
                links ? "group" : "img",
                "aria-labelledby",
                view.idPrefix() + "title",
                "aria-describedby",
                view.idPrefix() + "desc",
                "font-family",
                "system-ui, 'Liberation Sans', Arial, sans-serif");
    }

    static void say(Svg svg, View view, String title, String description) {
        svg.say("title", title, "id", view.idPrefix() + "title");
        svg.say("desc", description, "id", view.idPrefix() + "desc");
    }
}
