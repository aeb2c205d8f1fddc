package org.layshaft.kb.parts;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Layout;

/**
 * A layout built from what was typed, sound or not.
 *
 * @param parts in the order of the file, derived parts after what they derive from; an id may stand twice
 * @param layout of two parts with one id, the first
 */
public record BuiltLayout(Layout layout, List<BuiltPart> parts) {
    public BuiltLayout {
        parts = List.copyOf(parts);
    }

    public Optional<BuiltPart> part(String id) {
        return parts.stream().filter(built -> built.part().id().equals(id)).findFirst();
    }
}
