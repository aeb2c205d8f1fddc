package org.layshaft.kb.typed;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.layout.Side;

/**
 * A rail as typed, or as it stands by default.
 *
 * @param base the base name: {@code 3-4}
 * @param called what its places are called, where typed
 * @param moves base names of the sleeves and sliding gears that it moves
 */
public record TypedRail(String pointer, String base, Naming naming, Map<Side, String> called, List<Reference> moves) {
    public TypedRail {
        Map<Side, String> ordered = new EnumMap<>(Side.class);
        ordered.putAll(called);
        called = Collections.unmodifiableMap(ordered);
        moves = List.copyOf(moves);
    }

    public String id() {
        return idOf(base);
    }

    /** The id of the rail with this base name. */
    public static String idOf(String base) {
        return base + "-rail";
    }

    TypedRail within(UnitNames unit) {
        return new TypedRail(unit.pointer(), unit.id(base), unit.naming(naming), called, unit.references(moves));
    }
}
