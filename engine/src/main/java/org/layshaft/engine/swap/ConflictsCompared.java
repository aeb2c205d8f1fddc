package org.layshaft.engine.swap;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;

/** Puts the pairs of gears that an interlock keeps apart side by side, by the places of the lever that give them. */
record ConflictsCompared(Installed before, Installed after) {

    List<ConflictComparison> all() {
        Map<Set<Box.Push>, Conflict> now = byPlaces(after);
        return byPlaces(before).entrySet().stream()
                .map(was -> new ConflictComparison(was.getValue(), Optional.ofNullable(now.get(was.getKey()))))
                .toList();
    }

    private static Map<Set<Box.Push>, Conflict> byPlaces(Installed installed) {
        Map<Set<Box.Push>, Conflict> byPlaces = new LinkedHashMap<>();
        installed.conflicts().forEach(conflict -> byPlaces.put(places(conflict, installed.box()), conflict));
        return byPlaces;
    }

    private static Set<Box.Push> places(Conflict conflict, Box box) {
        return box.gears().stream()
                .filter(gear -> conflict.gears().contains(gear.name()))
                .flatMap(gear -> gear.first().stream())
                .collect(Collectors.toSet());
    }
}
