package org.layshaft.kb.typed;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.layshaft.kb.layout.Side;

/**
 * One place of a shift drum as typed.
 *
 * @param pushes base names of the rails that it pushes, with the side
 */
public record TypedPlace(String pointer, Map<Reference, Side> pushes) {
    public TypedPlace {
        pushes = Collections.unmodifiableMap(new LinkedHashMap<>(pushes));
    }

    TypedPlace within(UnitNames unit) {
        Map<Reference, Side> within = new LinkedHashMap<>();
        pushes.forEach((rail, side) -> within.put(unit.reference(rail), side));
        return new TypedPlace(unit.pointer(), within);
    }
}
