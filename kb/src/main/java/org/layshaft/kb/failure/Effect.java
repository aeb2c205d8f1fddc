package org.layshaft.kb.failure;

import java.util.Map;
import java.util.Optional;

/**
 * One change that a failure makes.
 *
 * @param argument side, position or place, as {@link EffectKind#argument()} asks
 * @param onlyIf what must be told of the fault for this change to be made; empty for always
 */
public record Effect(EffectKind kind, Optional<Given> argument, Map<String, String> onlyIf) {
    public Effect {
        onlyIf = Map.copyOf(onlyIf);
    }

    public boolean appliesTo(Map<String, String> told) {
        return told.entrySet().containsAll(onlyIf.entrySet());
    }
}
