package org.layshaft.web.drawing;

import java.util.HashMap;
import java.util.Map;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;

/** How far outside the shafts of epicyclic sets lie: suns 0, carriers 1, rings 2, by the outermost of what a shaft is. */
final class EpicyclicRanks {
    private final Map<String, Integer> rankOf = new HashMap<>();

    EpicyclicRanks(Layout layout) {
        Planets planets = new Planets(layout);
        planets.spindles().forEach(spindle -> rankOf.merge(spindle.carriedBy().orElseThrow(), 1, Math::max));
        layout.all(Gear.class)
                .filter(planets::isRing)
                .filter(planets::isInSet)
                .forEach(ring -> rankOf.merge(ring.carrier(), 2, Math::max));
    }

    int of(String shaft) {
        return rankOf.getOrDefault(shaft, 0);
    }
}
