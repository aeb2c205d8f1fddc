package org.layshaft.kb.layout;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a fork moves: a sleeve or a sliding gear.
 *
 * @param part id of the sleeve or of the sliding gear
 * @param sides what it engages on each side; a side that engages nothing is absent
 */
public record ShiftMember(String part, Map<Side, Engagement> sides) {
    public ShiftMember {
        sides = Collections.unmodifiableMap(new EnumMap<>(sides));
    }

    public Optional<Engagement> at(Side side) {
        return Optional.ofNullable(sides.get(side));
    }
}
