package org.layshaft.kb.layout;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What selects: one place of it at a time. The gear lever is one; a range or splitter switch, the drum of a shift
 * pedal, or the pair of clutches in front of two input shafts is another. Levers do not keep each other apart.
 *
 * @param id {@code gear} for the gear lever
 * @param neutral whether it has a place in which it engages nothing
 * @param neutralCalled what that place is called, where the layout says: {@code two-wheel}
 * @param places the others, in the order of the layout
 */
public record Lever(String id, String name, boolean neutral, Optional<String> neutralCalled, List<Place> places) {
    public static final String GEAR = "gear";

    public Lever {
        places = List.copyOf(places);
    }

    /**
     * One place of a lever.
     *
     * @param called what the place is called, where the layout says: {@code low}
     * @param pushes rails by id with the side that each is pushed to; a clutch that is closed stands at {@link Side#FRONT}
     */
    public record Place(Optional<String> called, Map<String, Side> pushes) {
        public Place {
            pushes = Collections.unmodifiableMap(new TreeMap<>(pushes));
        }
    }
}
