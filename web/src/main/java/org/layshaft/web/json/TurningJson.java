package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Turning;

/**
 * How one part turns.
 *
 * @param speed its turns for one turn of the input; null where the input does not fix it
 * @param sense {@code same} as the input, {@code opposite}, {@code stands}, or {@code free}
 */
public record TurningJson(String part, String name, NumberJson speed, String sense) {

    static List<TurningJson> all(Layout layout, Names names, Motion motion) {
        return Turning.of(layout, names, motion).stream()
                .map(turning -> new TurningJson(
                        turning.part(),
                        turning.name(),
                        turning.speed().map(NumberJson::of).orElse(null),
                        Spelling.of(turning.sense())))
                .toList();
    }
}
