package org.layshaft.kb.typed;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.layout.InterlockKind;

/** Reads rails, gate and interlock; by default there is a rail for each sleeve and sliding gear. */
final class SelectorReading {
    private SelectorReading() {}

    static TypedSelector of(Item item, List<TypedMember> members) {
        List<TypedRail> rails = item.get("rails").isPresent()
                ? item.get("rails").items().stream()
                        .flatMap(rail -> rail(rail).stream())
                        .toList()
                : members.stream().map(SelectorReading::defaultRail).toList();
        List<Reference> gate = item.get("gate").isPresent()
                ? GearReading.references(item.get("gate"))
                : rails.stream()
                        .map(rail -> new Reference(rail.base(), rail.pointer()))
                        .toList();
        InterlockKind unlessTyped = rails.size() > 1 ? InterlockKind.PINS : InterlockKind.NONE;
        InterlockKind interlock =
                item.get("interlock").text().flatMap(SelectorReading::interlock).orElse(unlessTyped);
        return new TypedSelector(item.pointer(), rails, gate, interlock);
    }

    private static Optional<TypedRail> rail(Item item) {
        if (item.isObject()) {
            return item.get("rail").text().map(base -> {
                List<Reference> moves = item.get("moves").isPresent()
                        ? GearReading.references(item.get("moves"))
                        : List.of(new Reference(base, item.pointer()));
                return new TypedRail(item.pointer(), base, LayoutReading.naming(item), moves);
            });
        }
        return item.text()
                .map(base ->
                        new TypedRail(item.pointer(), base, Naming.NONE, List.of(new Reference(base, item.pointer()))));
    }

    private static TypedRail defaultRail(TypedMember member) {
        return new TypedRail(
                member.pointer(), member.base(), Naming.NONE, List.of(new Reference(member.base(), member.pointer())));
    }

    private static Optional<InterlockKind> interlock(String word) {
        return Arrays.stream(InterlockKind.values())
                .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }
}
