package org.layshaft.kb.typed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.LimitedSlip;
import org.layshaft.kb.layout.Seat;

/** Reads differentials: the one of a transaxle, and the several of a transfer box or a whole car. */
final class DifferentialReading {
    private DifferentialReading() {}

    static List<TypedDifferential> of(Item file, GearReading gears) {
        return Stream.concat(Stream.of(file.get("differential")), file.get("differentials").items().stream())
                .filter(Item::isObject)
                .map(item -> differential(item, gears))
                .toList();
    }

    private static TypedDifferential differential(Item item, GearReading gears) {
        Item ring = item.get("ring_gear");
        return new TypedDifferential(
                item.pointer(),
                item.get("id").text().orElse("differential"),
                LayoutReading.naming(item),
                Optional.of(ring)
                        .filter(Item::isObject)
                        .map(gear -> gears.gear(gear, gear.get("id").text().orElse("ring-gear"), Seat.FIXED)),
                item.get("on")
                        .text()
                        .map(shaft -> new Reference(shaft, item.get("on").pointer())),
                sides(item),
                Optional.of(item.get("limited_slip"))
                        .filter(Item::isObject)
                        .map(slip -> new LimitedSlip(
                                slip.get("preload_nm").number(),
                                slip.get("bias_ratio").number())),
                item.get("rigid").truth().orElse(false));
    }

    private static TypedDifferential.Sides sides(Item item) {
        if (item.get("shafts").isPresent()) {
            return new TypedDifferential.Sides.Shafts(GearReading.references(item.get("shafts")));
        }
        return new TypedDifferential.Sides.HalfShafts(
                item.get("half_shafts").isPresent()
                        ? GearReading.references(item.get("half_shafts"))
                        : List.of(new Reference("left", item.pointer()), new Reference("right", item.pointer())));
    }
}
