package org.layshaft.kb.typed;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.layout.Seat;

/** Reads a layout file into what was typed. What has the wrong type is left out: the schema has said so. */
public final class LayoutReading {
    private static final String INPUT = "input";
    private static final String OUTPUT = "output";

    private LayoutReading() {}

    public static TypedLayout of(Item file) {
        GearReading gears = GearReading.withDefaultsOf(file);
        List<TypedShaft> shafts = new ArrayList<>();
        file.get("shafts").entries().forEach((id, shaft) -> shafts.add(ShaftReading.of(id, shaft, gears)));
        Reference input = reference(file, INPUT);
        return new TypedLayout(
                new Reference(file.get("id").text().orElse(""), file.get("id").pointer()),
                file.get("name").text().or(() -> file.get("id").text()).orElse(""),
                file.get("summary").text().orElse(""),
                input,
                reference(file, OUTPUT),
                shafts,
                Optional.of(file.get("differential")).filter(Item::isObject).map(item -> differential(item, gears)),
                SelectorReading.of(file.get("selector"), MembersOnShafts.of(shafts)),
                clutch(file.get("clutch"), input),
                printed(file.get("printed")),
                names(file.get("names")));
    }

    static Naming naming(Item item) {
        return new Naming(item.get("name").text(), item.get("also").texts());
    }

    private static Reference reference(Item file, String key) {
        return new Reference(file.get(key).text().orElse(key), Pointers.child("", key));
    }

    private static TypedDifferential differential(Item item, GearReading gears) {
        Item ring = item.get("ring_gear");
        TypedGear ringGear = gears.gear(ring, ring.get("id").text().orElse("ring-gear"), Seat.FIXED);
        List<Reference> sides = item.get("half_shafts").isPresent()
                ? GearReading.references(item.get("half_shafts"))
                : List.of(new Reference("left", item.pointer()), new Reference("right", item.pointer()));
        String id = item.get("id").text().orElse("differential");
        return new TypedDifferential(item.pointer(), id, naming(item), ringGear, sides);
    }

    private static Optional<TypedClutch> clutch(Item item, Reference input) {
        if (item.truth().filter(there -> !there).isPresent()) {
            return Optional.empty();
        }
        Reference drives = item.get("drives")
                .text()
                .map(id -> new Reference(id, item.get("drives").pointer()))
                .orElse(input);
        return Optional.of(new TypedClutch(item.pointer(), naming(item), drives));
    }

    private static Map<String, BigDecimal> printed(Item item) {
        Map<String, BigDecimal> printed = new LinkedHashMap<>();
        item.entries().forEach((gear, ratio) -> ratio.decimal().ifPresent(value -> printed.put(gear, value)));
        return printed;
    }

    private static Map<Reference, Naming> names(Item item) {
        Map<Reference, Naming> names = new LinkedHashMap<>();
        item.entries().forEach((id, entry) -> names.put(new Reference(id, entry.pointer()), naming(entry)));
        return names;
    }
}
