package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.PartSet;

/** What can be ordered: sets, and the parts that are to be had by themselves. Made once for each catalogue. */
final class SoldTogether {
    private final Map<String, List<PartSet>> wholeSets = new HashMap<>();
    private final Map<ComponentKind, List<PartSet>> units = new HashMap<>();

    private SoldTogether(Catalogue catalogue) {
        catalogue.sets().values().stream()
                .filter(PartSet::onlyWhole)
                .forEach(set -> set.parts()
                        .values()
                        .forEach(part -> wholeSets
                                .computeIfAbsent(part, none -> new ArrayList<>())
                                .add(set)));
        Map<String, PartSet> all = new LinkedHashMap<>();
        catalogue.parts().values().stream()
                .filter(part -> !wholeSets.containsKey(part.number()))
                .forEach(part -> all.put(part.number(), PartSet.of(part)));
        all.putAll(catalogue.sets());
        all.values()
                .forEach(unit -> unit.parts().values().stream()
                        .flatMap(number -> catalogue.part(number).stream())
                        .map(CataloguePart::kind)
                        .distinct()
                        .forEach(kind -> units.computeIfAbsent(kind, none -> new ArrayList<>())
                                .add(unit)));
    }

    static SoldTogether in(Catalogue catalogue) {
        return new SoldTogether(catalogue);
    }

    /** The sets that this part is only to be had or used in; none where it stands by itself. */
    List<PartSet> wholeSets(String part) {
        return wholeSets.getOrDefault(part, List.of());
    }

    /** What can be ordered that holds a part of this kind. */
    List<PartSet> units(ComponentKind kind) {
        return units.getOrDefault(kind, List.of());
    }
}
