package org.layshaft.web.drawing;

import java.util.function.Consumer;
import org.layshaft.kb.layout.Part;

/**
 * One part as it is drawn.
 *
 * @param box what it covers
 * @param shapes writes its shapes; they inherit fill and line from the element that holds them
 */
record Figure(Part part, Box box, Ink ink, Consumer<Svg> shapes) {}
