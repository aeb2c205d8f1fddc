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
 * @param parted half-shafts that no longer reach their wheel, joints and inner clutches that no longer join,
 *     differentials that no longer turn their sides, and output shafts behind which nothing is turned any more
 * @param fastBearings bearings in which nothing turns, and differentials whose sides turn as one
 */
public record Changes(
        Set<String> strippedGears,
        Set<String> looseSeats,
        Set<String> seizedGears,
        Map<String, String> cuts,
        Set<String> parted,
        Set<String> fastBearings) {
    public static final Changes NONE = new Changes(Set.of(), Set.of(), Set.of(), Map.of(), Set.of(), Set.of());

    public Changes {
        strippedGears = sorted(strippedGears);
        looseSeats = sorted(looseSeats);
        seizedGears = sorted(seizedGears);
        cuts = Collections.unmodifiableMap(new TreeMap<>(cuts));
        parted = sorted(parted);
        fastBearings = sorted(fastBearings);
    }

    private static Set<String> sorted(Set<String> ids) {
        return Collections.unmodifiableSet(new TreeSet<>(ids));
    }

    public boolean areNone() {
        return equals(NONE);
    }

    /** Both together. */
    public Changes and(Changes other) {
        Map<String, String> allCuts = new TreeMap<>(cuts);
        allCuts.putAll(other.cuts);
        return new Changes(
                both(strippedGears, other.strippedGears),
                both(looseSeats, other.looseSeats),
                both(seizedGears, other.seizedGears),
                allCuts,
                both(parted, other.parted),
                both(fastBearings, other.fastBearings));
    }

    private static Set<String> both(Set<String> one, Set<String> other) {
        Set<String> both = new TreeSet<>(one);
        both.addAll(other);
        return both;
    }
}
