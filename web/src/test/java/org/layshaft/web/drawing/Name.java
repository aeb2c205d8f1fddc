package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/** A name as it stands in a drawing. */
record Name(String text, Box box) {

    static List<Name> all(Drawing drawing) {
        return Picture.of(drawing.svg()).ofClass("name").map(Name::of).toList();
    }

    /** Lines of a text stand one under the other about one x. */
    private static Name of(Element text) {
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < text.getElementsByTagName("tspan").getLength(); at++) {
            lines.add(text.getElementsByTagName("tspan").item(at).getTextContent());
        }
        Element first = Picture.first(text, "tspan");
        double size = Double.parseDouble(text.getAttribute("font-size"));
        Label label = new Label(lines, size, "name");
        double baseline = Double.parseDouble(first.getAttribute("y"));
        return new Name(
                String.join(" ", lines), label.box(Double.parseDouble(first.getAttribute("x")), baseline - size));
    }
}
