package org.layshaft.engine.train;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What faults change in the equations. Parts by id.
 *
 * @param strippedGears gears none of whose meshes carries
 * @param looseSeats fixed gears, and hubs, that turn free on their shaft
 * @param seizedGears free gears that turn with their shaft
 * @param cuts by shaft, the id of what sits just in front of the break
 * @param partedHalfShafts half-shafts that no longer reach their wheel
 */
public record Changes(
        Set<String> strippedGears,
        Set<String> looseSeats,
        Set<String> seizedGears,
        Map<String, String> cuts,
        Set<String> partedHalfShafts) {
    public static final Changes NONE = new Changes(Set.of(), Set.of(), Set.of(), Map.of(), Set.of());

    public Changes {
        strippedGears = sorted(strippedGears);
        looseSeats = sorted(looseSeats);
        seizedGears = sorted(seizedGears);
        cuts = Collections.unmodifiableMap(new TreeMap<>(cuts));
        partedHalfShafts = sorted(partedHalfShafts);
    }

    private static Set<String> sorted(Set<String> ids) {
        return Collections.unmodifiableSet(new TreeSet<>(ids));
    }
}
