package org.layshaft.web.json;

import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import org.layshaft.engine.fit.BuiltBox;

/**
 * Boxes of one build.
 *
 * @param build its id
 * @param layout id of the layout
 * @param from the first serial number; null for from the beginning
 * @param to the last one; null for to the end
 */
public record BuiltBoxJson(String build, String layout, String name, Integer from, Integer to) {
    static BuiltBoxJson of(BuiltBox box) {
        return new BuiltBoxJson(
                box.build().id(),
                box.layout().id(),
                box.build().name(),
                number(box.build().serials().from()),
                number(box.build().serials().to()));
    }

    static List<BuiltBoxJson> all(Collection<BuiltBox> boxes) {
        return boxes.stream().map(BuiltBoxJson::of).toList();
    }

    private static Integer number(OptionalInt serial) {
        return serial.isPresent() ? serial.getAsInt() : null;
    }
}
