package org.layshaft.web.json;

import java.util.List;
import org.layshaft.web.desk.PartsDesk;

/**
 * What the catalogue lists.
 *
 * @param sets sets, and then the parts by themselves
 * @param boxes whose parts it tells of
 */
public record PartsJson(List<SetJson> sets, List<BuiltBoxJson> boxes) {
    /** @param words what a number or a name must hold; empty for everything */
    public static PartsJson of(PartsDesk parts, String words) {
        return new PartsJson(
                SetJson.all(parts.holding(words)),
                BuiltBoxJson.all(parts.counter().boxes().values()));
    }
}
