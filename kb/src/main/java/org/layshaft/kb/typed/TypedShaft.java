package org.layshaft.kb.typed;

import java.util.List;

/**
 * A shaft as typed.
 *
 * @param held whether it stands still in the case
 * @param along from front to rear
 */
public record TypedShaft(String pointer, String id, Naming naming, boolean held, List<TypedItem> along) {
    public TypedShaft {
        along = List.copyOf(along);
    }

    /** Gears and sleeves, bearings left out, from front to rear. */
    public List<TypedItem> workingItems() {
        return along.stream().filter(item -> !(item instanceof TypedBearing)).toList();
    }
}
