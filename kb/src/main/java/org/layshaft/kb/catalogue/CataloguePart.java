package org.layshaft.kb.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A part by its number.
 *
 * @param number unique among parts and sets
 * @param name what it is called: {@code third gear, later}
 * @param facts of the part itself
 * @param features of places on it, by the id that the place has in a layout: on a shaft, of the gears that are cut on it,
 *     and of the seats of what sits on it; in a case, of the seats of bearings, and of two lines of shafts by both ids with
 *     a slash between
 * @param note anything that a person should read; empty where there is nothing
 */
public record CataloguePart(
        String number, ComponentKind kind, String name, Facts facts, Map<String, Facts> features, String note) {
    public CataloguePart {
        features = Collections.unmodifiableMap(new LinkedHashMap<>(features));
    }

    /** What is known of a place on it; nothing where the place is not told of. */
    public Facts feature(String place) {
        return features.getOrDefault(place, Facts.NONE);
    }
}
