package org.layshaft.kb.typed;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Pointers;

/** Reads a layout file into what was typed. What has the wrong type is left out: the schema has said so. */
public final class LayoutReading {
    private static final String INPUT = "input";

    private LayoutReading() {}

    public static TypedLayout of(Item file) {
        GearReading gears = GearReading.withDefaultsOf(file);
        List<TypedShaft> shafts = new ArrayList<>();
        file.get("shafts").entries().forEach((id, shaft) -> shafts.add(ShaftReading.of(id, shaft, gears)));
        List<TypedMember> members = MembersOnShafts.of(shafts);
        List<TypedLever> levers = LeverReading.of(file.get("selector"), members);
        List<TypedUnit> units = UnitReading.units(file);
        Reference input = input(file, units);
        return new TypedLayout(
                new Reference(file.get("id").text().orElse(""), file.get("id").pointer()),
                file.get("name").text().or(() -> file.get("id").text()).orElse(""),
                file.get("summary").text().orElse(""),
                input,
                GearReading.references(file.get("output")),
                GearReading.references(file.get("take_off")),
                shafts,
                DifferentialReading.of(file, gears),
                SelectorReading.of(file.get("selector"), "", LeverReading.forTheGearLever(members, levers)),
                levers,
                clutch(file.get("clutch"), input),
                printed(file.get("printed")),
                RoadReading.of(file.get("road")),
                names(file.get("names")),
                units,
                UnitReading.joins(file));
    }

    static Naming naming(Item item) {
        return new Naming(item.get("name").text(), item.get("also").texts());
    }

    private static Reference input(Item file, List<TypedUnit> units) {
        String byDefault = units.isEmpty() ? INPUT : units.get(0).name() + "-" + INPUT;
        return new Reference(file.get(INPUT).text().orElse(byDefault), Pointers.child("", INPUT));
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
