package org.layshaft.kb.layout;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is put in and out of engagement: a sleeve or a sliding gear by its fork, or a clutch inside the box.
 *
 * @param part id of the sleeve, sliding gear or clutch
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
