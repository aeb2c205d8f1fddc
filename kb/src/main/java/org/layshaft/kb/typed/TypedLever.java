package org.layshaft.kb.typed;

import java.util.List;

/**
 * A lever beside the gear lever, as typed: a range or splitter switch, or what closes one of two clutches.
 *
 * @param clutches base names of the clutches that it closes, one at a time
 */
public record TypedLever(String pointer, String id, Naming naming, TypedSelector selector, List<Reference> clutches) {
    public TypedLever {
        clutches = List.copyOf(clutches);
    }

    TypedLever within(UnitNames unit) {
        return new TypedLever(
                unit.pointer(), unit.id(id), unit.naming(naming), selector.within(unit), unit.references(clutches));
    }
}
