package org.layshaft.engine.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/**
 * A set put somewhere.
 *
 * @param parts of the set by place
 */
public record Placement(PartSet set, Map<String, CataloguePart> parts) {
    public Placement {
        // most are of one part, and there are very many of them
        parts = parts.size() == 1 ? Map.copyOf(parts) : Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }
}
