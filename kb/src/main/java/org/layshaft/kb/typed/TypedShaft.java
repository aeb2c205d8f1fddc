package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;

/**
 * A shaft as typed.
 *
 * @param held whether it stands still in the case
 * @param carriedBy the shaft that carries it round, as a planet's spindle is carried
 * @param count how many alike there are
 * @param along from front to rear
 */
public record TypedShaft(
        String pointer,
        String id,
        Naming naming,
        boolean held,
        Optional<Reference> carriedBy,
        int count,
        List<TypedItem> along) {
    public TypedShaft {
        along = List.copyOf(along);
    }

    /** Gears and sleeves, bearings left out, from front to rear. */
    public List<TypedItem> workingItems() {
        return along.stream().filter(item -> !(item instanceof TypedBearing)).toList();
    }

    TypedShaft within(UnitNames unit) {
        return new TypedShaft(
                unit.pointer(),
                unit.id(id),
                unit.naming(naming),
                held,
                unit.reference(carriedBy),
                count,
                along.stream().map(item -> item.within(unit)).toList());
    }
}
