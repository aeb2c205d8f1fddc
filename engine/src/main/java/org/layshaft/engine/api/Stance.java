package org.layshaft.engine.api;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.layshaft.kb.layout.Side;

/**
 * Where every sleeve and sliding gear stands.
 *
 * @param engaged by id of the sleeve or sliding gear, the side it stands to; one that is absent stands in neutral
 */
public record Stance(Map<String, Side> engaged) {
    public static final Stance NEUTRAL = new Stance(Map.of());

    public Stance {
        engaged = Collections.unmodifiableMap(new TreeMap<>(engaged));
    }

    public Optional<Side> of(String member) {
        return Optional.ofNullable(engaged.get(member));
    }

    public Stance with(String member, Side side) {
        Map<String, Side> more = new TreeMap<>(engaged);
        more.put(member, side);
        return new Stance(more);
    }
}
