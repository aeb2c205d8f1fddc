package org.layshaft.kb.typed;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.Rolling;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;

/** Reads a shaft and what sits along it. */
final class ShaftReading {
    private ShaftReading() {}

    static TypedShaft of(String id, Item shaft, GearReading gears) {
        boolean held = shaft.get("held").truth().orElse(false);
        List<TypedItem> along = shaft.get("along").items().stream()
                .flatMap(item -> item(item, held, gears).stream())
                .toList();
        Item carriedBy = shaft.get("carried_by");
        return new TypedShaft(
                shaft.pointer(),
                id,
                LayoutReading.naming(shaft),
                held,
                carriedBy.text().map(carrier -> new Reference(carrier, carriedBy.pointer())),
                shaft.get("count").whole().orElse(1),
                along);
    }

    private static Optional<TypedItem> item(Item item, boolean held, GearReading gears) {
        Optional<String> gear = item.get("gear").text();
        Optional<String> sliding = item.get("sliding").text();
        Optional<String> sleeve = item.get("sleeve").text();
        if (gear.isPresent()) {
            boolean free = item.get("free").truth().orElse(held);
            return Optional.of(gears.gear(item, gear.get(), free ? Seat.FREE : Seat.FIXED));
        }
        if (sliding.isPresent()) {
            return Optional.of(gears.gear(item, sliding.get(), Seat.SLIDING));
        }
        if (sleeve.isPresent()) {
            return Optional.of(sleeve(item, sleeve.get(), gears));
        }
        Optional<String> dogs = item.get("dogs").text();
        if (dogs.isPresent()) {
            return Optional.of(new TypedDogs(item.pointer(), dogs.get(), LayoutReading.naming(item)));
        }
        Optional<String> clutch = item.get("clutch").text();
        if (clutch.isPresent()) {
            return Optional.of(clutch(item, clutch.get()));
        }
        return item.get("bearing").text().map(id -> bearing(item, id));
    }

    private static TypedInnerClutch clutch(Item item, String base) {
        Item drives = item.get("drives");
        return new TypedInnerClutch(
                item.pointer(),
                base,
                LayoutReading.naming(item),
                new Reference(drives.text().orElse(""), drives.pointer()));
    }

    private static TypedSleeve sleeve(Item item, String base, GearReading gears) {
        Item rim = item.get("rim");
        Optional<TypedGear> rimGear = rim.get("gear").text().map(id -> gears.gear(rim, id, Seat.RIM));
        return new TypedSleeve(
                item.pointer(), base, LayoutReading.naming(item), rimGear, sides(item), rings(item.get("rings")));
    }

    static Map<Side, TypedSide> sides(Item item) {
        Map<Side, TypedSide> sides = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            side(item.get(side.word())).ifPresent(typed -> sides.put(side, typed));
        }
        return sides;
    }

    private static Optional<TypedSide> side(Item item) {
        if (item.isNull() || item.truth().isPresent()) {
            return Optional.of(new TypedSide.Nothing(item.pointer()));
        }
        if (item.isObject()) {
            return Optional.of(new TypedSide.Meshes(item.pointer(), GearReading.references(item.get("meshes"))));
        }
        return item.text().map(gear -> new TypedSide.Couples(new Reference(gear, item.pointer())));
    }

    private static Set<Side> rings(Item item) {
        return named(item.text().orElse("both"));
    }

    /** The sides that one of front, rear, both and none means. */
    private static Set<Side> named(String word) {
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            if (word.equals("both") || word.equals(side.word())) {
                sides.add(side);
            }
        }
        return sides;
    }

    private static TypedBearing bearing(Item item, String id) {
        Item in = item.get("in");
        return new TypedBearing(
                item.pointer(),
                id,
                LayoutReading.naming(item),
                in.text().map(shaft -> new Reference(shaft, in.pointer())),
                item.get("thrust").text().map(ShaftReading::named),
                Optional.of(item.get("rolling")).filter(Item::isObject).map(ShaftReading::rolling));
    }

    private static Rolling rolling(Item item) {
        return new Rolling(
                item.get("count").whole(),
                item.get("element_mm").decimal(),
                item.get("pitch_mm").decimal(),
                item.get("contact_deg").decimal());
    }
}
