package org.layshaft.kb.typed;

/** A ring of clutching teeth as typed, fixed on its shaft. */
public record TypedDogs(String pointer, String id, Naming naming) implements TypedItem {
    @Override
    public TypedDogs within(UnitNames unit) {
        return new TypedDogs(unit.pointer(), unit.id(id), unit.naming(naming));
    }
}
