package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** Everything that can be ordered, by where in a layout it could stand. Made when first asked for. Thread-safe. */
final class Shelf {
    private final Placements placements;
    private final Catalogue catalogue;
    private final SoldTogether together;
    private Map<String, List<Placement>> byPlace;

    Shelf(Placements placements, Catalogue catalogue, SoldTogether together) {
        this.placements = placements;
        this.catalogue = catalogue;
        this.together = together;
    }

    /** Every way that what can be ordered could stand so that a part of it comes to this place. */
    synchronized List<Placement> at(String place) {
        if (byPlace == null) {
            byPlace = new HashMap<>();
            together.units()
                    .flatMap(unit -> placements.of(unit, catalogue).stream())
                    .forEach(placement -> placement
                            .parts()
                            .keySet()
                            .forEach(each -> byPlace.computeIfAbsent(each, none -> new ArrayList<>())
                                    .add(placement)));
        }
        return byPlace.getOrDefault(place, List.of());
    }

    /** Every way to put the whole of a set in that this part is only to be had or used in, with the part at this place. */
    Stream<Placement> wholeSets(CataloguePart part, String place) {
        return Stream.concat(together.wholeSets(part.number()).stream(), together.designs(part.number()).stream())
                .distinct()
                .flatMap(set -> placements.of(set, catalogue).stream())
                .filter(placement -> isAt(placement, part, place));
    }

    private static boolean isAt(Placement placement, CataloguePart part, String place) {
        CataloguePart there = placement.parts().get(place);
        return there != null && there.number().equals(part.number());
    }

    List<Placement> of(PartSet set) {
        return placements.of(set, catalogue);
    }
}
