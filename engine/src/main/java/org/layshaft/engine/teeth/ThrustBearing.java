package org.layshaft.engine.teeth;

import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.layout.Side;

/**
 * A bearing of a shaft and what thrust it takes.
 *
 * @param name as it stands in a sentence: {@code the rear countershaft bearing}
 * @param takes the ends that it keeps the shaft from moving toward: none for plain rollers, both for a deep-groove
 *     ball bearing held both ways; empty where that is not stated
 */
public record ThrustBearing(String name, Optional<Set<Side>> takes) {
    public ThrustBearing {
        takes = takes.map(Set::copyOf);
    }

    boolean takesToward(Side side) {
        return takes.filter(ends -> ends.contains(side)).isPresent();
    }
}
