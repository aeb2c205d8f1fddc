package org.layshaft.kb.typed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Item;

/** Reads the units that a layout is joined from, and the joins between them. */
final class UnitReading {
    private UnitReading() {}

    static List<TypedUnit> units(Item file) {
        boolean clutchIsTyped = file.get("clutch").isPresent();
        List<TypedUnit> units = new ArrayList<>();
        file.get("units")
                .entries()
                .forEach((name, unit) -> unit.text()
                        .map(id -> new TypedUnit(
                                name, new Reference(id, unit.pointer()), !clutchIsTyped && units.isEmpty()))
                        .ifPresent(units::add));
        return units;
    }

    static List<TypedJoin> joins(Item file) {
        return file.get("joins").items().stream()
                .flatMap(item -> join(item).stream())
                .toList();
    }

    private static Optional<TypedJoin> join(Item item) {
        Item from = item.get("from");
        Item to = item.get("to");
        return from.text()
                .flatMap(driving -> to.text()
                        .map(driven -> new TypedJoin(
                                item.pointer(),
                                item.get("by").text().orElse(driving + "-joint"),
                                LayoutReading.naming(item),
                                new Reference(driving, from.pointer()),
                                new Reference(driven, to.pointer()))));
    }
}
