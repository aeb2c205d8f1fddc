package org.layshaft.web.json;

import java.util.List;
import java.util.Map;
import org.layshaft.kb.catalogue.PartSet;

/**
 * A set, or a part by itself.
 *
 * @param shape {@code pair}, {@code synchroniser}; {@code single} for a part by itself
 * @param parts part numbers by role
 * @param onlyWhole whether its parts are not to be had one without the others
 * @param note empty where there is nothing to note
 */
public record SetJson(
        String number, String name, String shape, Map<String, String> parts, boolean onlyWhole, String note) {
    static SetJson of(PartSet set) {
        return new SetJson(set.number(), set.name(), set.shape().word(), set.parts(), set.onlyWhole(), set.note());
    }

    static List<SetJson> all(List<PartSet> sets) {
        return sets.stream().map(SetJson::of).toList();
    }
}
