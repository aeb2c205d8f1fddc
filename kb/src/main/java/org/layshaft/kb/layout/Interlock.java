package org.layshaft.kb.layout;

import java.util.List;

/**
 * What keeps rails apart.
 *
 * @param rails ids of the rails it rules, in the order in which they lie side by side
 * @param pieces ids of its pieces; empty where there is no interlock
 */
public record Interlock(Named named, InterlockKind form, List<String> rails, List<String> pieces) implements Part {
    public Interlock {
        rails = List.copyOf(rails);
        pieces = List.copyOf(pieces);
    }

    @Override
    public PartKind kind() {
        return PartKind.INTERLOCK;
    }
}
