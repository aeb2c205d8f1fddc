package org.layshaft.kb.typed;

import java.util.List;

/**
 * A differential as typed.
 *
 * @param halfShafts the sides they go to: {@code left}
 */
public record TypedDifferential(
        String pointer, String id, Naming naming, TypedGear ringGear, List<Reference> halfShafts) {
    public TypedDifferential {
        halfShafts = List.copyOf(halfShafts);
    }
}
