package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.PartSet;

/** What can be ordered: sets, and the parts that are to be had by themselves. Made once for each catalogue. */
final class SoldTogether {
    private final Map<String, List<PartSet>> wholeSets = new HashMap<>();
    private final Map<String, List<PartSet>> designs = new HashMap<>();
    private final Map<String, PartSet> units = new LinkedHashMap<>();

    private SoldTogether(Catalogue catalogue) {
        catalogue.sets().values().stream()
                .filter(PartSet::onlyWhole)
                .forEach(set -> set.parts()
                        .values()
                        .forEach(part -> wholeSets
                                .computeIfAbsent(part, none -> new ArrayList<>())
                                .add(set)));
        catalogue.sets().values().stream()
                .filter(PartSet::oneDesign)
                .forEach(set -> set.parts()
                        .values()
                        .forEach(part -> designs.computeIfAbsent(part, none -> new ArrayList<>())
                                .add(set)));
        catalogue.parts().values().stream()
                .filter(part -> !wholeSets.containsKey(part.number()))
                .forEach(part -> units.put(part.number(), PartSet.of(part)));
        units.putAll(catalogue.sets());
    }

    static SoldTogether in(Catalogue catalogue) {
        return new SoldTogether(catalogue);
    }

    /** The sets beside the rest of which this part serves; none where it serves beside anything. */
    List<PartSet> designs(String part) {
        return designs.getOrDefault(part, List.of());
    }

    /** The sets that this part is only to be had in; none where it is to be had by itself. */
    List<PartSet> wholeSets(String part) {
        return wholeSets.getOrDefault(part, List.of());
    }

    /** Everything that can be ordered. */
    Stream<PartSet> units() {
        return units.values().stream();
    }
}
