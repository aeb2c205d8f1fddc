package org.layshaft.engine.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/**
 * What must come along so that a set serves.
 *
 * @param units what is to be ordered, at least one
 * @param parts of them, by the place where each goes
 * @param cures what failed without them, unit by unit: the judgement that each was chosen for
 * @param told whether everything can be told with them; otherwise they are only not known not to serve
 */
public record Companions(List<PartSet> units, Map<String, CataloguePart> parts, List<Judgement> cures, boolean told) {
    public Companions {
        units = List.copyOf(units);
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        cures = List.copyOf(cures);
    }
}
