package org.layshaft.kb.typed;

/**
 * What makes two shafts turn as one, as typed: a propeller shaft, or two flanges.
 *
 * @param id as typed, or by default that of the driving shaft with {@code -joint}
 * @param from the shaft that is joined at its rear end
 * @param to the shaft that is joined at its front end
 */
public record TypedJoin(String pointer, String id, Naming naming, Reference from, Reference to) {
    TypedJoin within(UnitNames unit) {
        return new TypedJoin(
                unit.pointer(), unit.id(id), unit.naming(naming), unit.reference(from), unit.reference(to));
    }
}
