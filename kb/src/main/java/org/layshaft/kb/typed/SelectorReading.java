package org.layshaft.kb.typed;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Side;

/** Reads rails, gate and interlock; by default there is a rail for each sleeve and sliding gear. */
final class SelectorReading {
    private SelectorReading() {}

    /**
     * @param prefix goes before the ids of the interlock and its pieces
     * @param members what the lever moves where no rails are typed
     */
    static TypedSelector of(Item item, String prefix, List<TypedMember> members) {
        List<TypedRail> rails = item.get("rails").isPresent()
                ? rails(item)
                : members.stream()
                        .filter(member -> !(member instanceof TypedInnerClutch))
                        .map(SelectorReading::defaultRail)
                        .toList();
        List<Reference> gate = item.get("gate").isPresent()
                ? GearReading.references(item.get("gate"))
                : rails.stream()
                        .map(rail -> new Reference(rail.base(), rail.pointer()))
                        .toList();
        List<TypedPlace> drum =
                item.get("drum").items().stream().map(SelectorReading::place).toList();
        InterlockKind interlock = item.get("interlock")
                .text()
                .flatMap(word -> GearReading.named(InterlockKind.values(), word))
                .orElse(interlockOf(rails.size(), !drum.isEmpty()));
        boolean neutral = item.get("neutral").truth().orElse(true);
        return new TypedSelector(
                item.pointer(),
                prefix,
                rails,
                gate,
                interlock,
                neutral,
                item.get("neutral").text(),
                drum,
                item.get("worked_by").text().flatMap(word -> GearReading.named(WorkedBy.values(), word)),
                lockOut(item.get("lock_out")));
    }

    private static InterlockKind interlockOf(int rails, boolean drum) {
        if (rails < 2) {
            return InterlockKind.NONE;
        }
        return drum ? InterlockKind.DRUM : InterlockKind.PINS;
    }

    private static List<TypedRail> rails(Item item) {
        return item.get("rails").items().stream()
                .flatMap(rail -> rail(rail).stream())
                .toList();
    }

    private static Optional<TypedSelector.LockOut> lockOut(Item item) {
        return place(item).pushes().entrySet().stream()
                .findFirst()
                .map(push -> new TypedSelector.LockOut(push.getKey(), push.getValue()));
    }

    private static TypedPlace place(Item item) {
        Map<Reference, Side> pushes = new LinkedHashMap<>();
        item.entries()
                .forEach((rail, side) -> side.text()
                        .flatMap(word -> GearReading.named(Side.values(), word))
                        .ifPresent(to -> pushes.put(new Reference(rail, side.pointer()), to)));
        return new TypedPlace(item.pointer(), pushes);
    }

    private static Optional<TypedRail> rail(Item item) {
        if (item.isObject()) {
            return item.get("rail").text().map(base -> {
                List<Reference> moves = item.get("moves").isPresent()
                        ? GearReading.references(item.get("moves"))
                        : List.of(new Reference(base, item.pointer()));
                return new TypedRail(item.pointer(), base, LayoutReading.naming(item), called(item), moves);
            });
        }
        return item.text()
                .map(base -> new TypedRail(
                        item.pointer(), base, Naming.NONE, Map.of(), List.of(new Reference(base, item.pointer()))));
    }

    private static TypedRail defaultRail(TypedMember member) {
        return new TypedRail(
                member.pointer(),
                member.base(),
                Naming.NONE,
                Map.of(),
                List.of(new Reference(member.base(), member.pointer())));
    }

    /** What the places of a rail are called. */
    private static Map<Side, String> called(Item rail) {
        Map<Side, String> called = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            rail.get(side.word()).text().ifPresent(name -> called.put(side, name));
        }
        return called;
    }
}
