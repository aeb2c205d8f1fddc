package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;

/**
 * The names typed for a part.
 *
 * @param name empty where the default name serves
 */
public record Naming(Optional<String> name, List<String> also) {
    static final Naming NONE = new Naming(Optional.empty(), List.of());

    public Naming {
        also = List.copyOf(also);
    }
}
