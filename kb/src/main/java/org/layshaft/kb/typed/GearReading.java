package org.layshaft.kb.typed;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Seat;

/**
 * Reads gears.
 *
 * @param moduleMm normal module of a gear for which none is typed, in mm
 * @param pressureAngleDeg normal pressure angle of a gear for which none is typed, in degrees
 * @param helixDeg helix angle of a gear for which none is typed, in degrees
 */
record GearReading(OptionalDouble moduleMm, double helixDeg, double pressureAngleDeg) {

    private static final double USUAL_PRESSURE_ANGLE_DEG = 20;

    static GearReading withDefaultsOf(Item file) {
        return new GearReading(
                file.get("module_mm").number(),
                file.get("helix_deg").number().orElse(0),
                file.get("pressure_angle_deg").number().orElse(USUAL_PRESSURE_ANGLE_DEG));
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
                item.get("hand").text().flatMap(word -> named(Hand.values(), word)),
                item.get("pressure_angle_deg").number().orElse(pressureAngleDeg),
                item.get("internal").truth().orElse(false),
                item.get("crown").text().flatMap(word -> named(Crown.values(), word)),
                references(item.get("meshes")),
                references(item.get("chain")),
                seat == Seat.SLIDING ? ShaftReading.sides(item) : Map.of());
    }

    /** The constant that is written so: {@code left}. */
    static <E extends Enum<E>> Optional<E> named(E[] values, String word) {
        return Arrays.stream(values)
                .filter(value -> value.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    /** An id, or a list of ids. */
    static List<Reference> references(Item item) {
        return item.oneOrMore().stream()
                .flatMap(one -> one.text().map(id -> new Reference(id, one.pointer())).stream())
                .toList();
    }
}
