package org.layshaft.kb.typed;

import java.util.List;

/**
 * A rail as typed, or as it stands by default.
 *
 * @param base the base name: {@code 3-4}
 * @param moves base names of the sleeves and sliding gears that it moves
 */
public record TypedRail(String pointer, String base, Naming naming, List<Reference> moves) {
    public TypedRail {
        moves = List.copyOf(moves);
    }

    public String id() {
        return base + "-rail";
    }
}
