package org.layshaft.web.drawing;

import java.util.List;
import java.util.function.Consumer;
import org.layshaft.kb.layout.Part;

/**
 * One part as it is drawn.
 *
 * @param box what it is drawn in
 * @param covers what of it hides what lies behind; less than the box for a ring that others lie in
 * @param shapes writes its shapes; they inherit fill and line from the element that holds them
 */
record Figure(Part part, Box box, Ink ink, List<Box> covers, Consumer<Svg> shapes) {
    Figure {
        covers = List.copyOf(covers);
    }

    Figure(Part part, Box box, Ink ink, Consumer<Svg> shapes) {
        this(part, box, ink, List.of(box), shapes);
    }
}
