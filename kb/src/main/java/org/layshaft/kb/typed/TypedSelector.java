package org.layshaft.kb.typed;

import java.util.List;
import org.layshaft.kb.layout.InterlockKind;

/**
 * Rails, gate and interlock as typed, defaults filled in.
 *
 * @param gate base names of the rails in the order in which the lever passes them
 */
public record TypedSelector(String pointer, List<TypedRail> rails, List<Reference> gate, InterlockKind interlock) {
    public TypedSelector {
        rails = List.copyOf(rails);
        gate = List.copyOf(gate);
    }
}
