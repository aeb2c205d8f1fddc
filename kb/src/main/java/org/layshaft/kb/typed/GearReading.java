package org.layshaft.kb.typed;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.Seat;

/**
 * Reads gears.
 *
 * @param moduleMm normal module of a gear for which none is typed, in mm
 * @param helixDeg helix angle of a gear for which none is typed, in degrees
 */
record GearReading(OptionalDouble moduleMm, double helixDeg) {

    static GearReading withDefaultsOf(Item file) {
        return new GearReading(
                file.get("module_mm").number(), file.get("helix_deg").number().orElse(0));
    }

    TypedGear gear(Item item, String id, Seat seat) {
        OptionalDouble ownModule = item.get("module_mm").number();
        return new TypedGear(
                item.pointer(),
                id,
                LayoutReading.naming(item),
                seat,
                item.get("teeth").whole(),
                ownModule.isPresent() ? ownModule : moduleMm,
                item.get("helix_deg").number().orElse(helixDeg),
                references(item.get("meshes")),
                seat == Seat.SLIDING ? ShaftReading.sides(item) : Map.of());
    }

    /** An id, or a list of ids. */
    static List<Reference> references(Item item) {
        return item.oneOrMore().stream()
                .flatMap(one -> one.text().map(id -> new Reference(id, one.pointer())).stream())
                .toList();
    }
}
