package org.layshaft.kb.typed;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.json.Item;

/** Reads the levers beside the gear lever; clutches inside the box have one by default. */
final class LeverReading {
    private static final String CLUTCHES = "clutches";

    private LeverReading() {}

    static List<TypedLever> of(Item selector, List<TypedMember> members) {
        List<TypedLever> levers = new ArrayList<>();
        selector.get("levers").items().stream()
                .flatMap(item -> item.get("lever").text().map(id -> lever(item, id)).stream())
                .forEach(levers::add);
        List<Reference> left = clutches(members)
                .filter(clutch -> levers.stream()
                        .flatMap(lever -> lever.clutches().stream())
                        .noneMatch(named -> named.id().equals(clutch.base())))
                .map(clutch -> new Reference(clutch.base(), clutch.pointer()))
                .toList();
        if (!left.isEmpty()) {
            boolean taken = levers.stream().anyMatch(lever -> lever.id().equals(CLUTCHES));
            levers.add(new TypedLever(
                    selector.pointer(),
                    taken ? "other-" + CLUTCHES : CLUTCHES,
                    Naming.NONE,
                    TypedSelector.withoutRails(selector.pointer()),
                    left));
        }
        return List.copyOf(levers);
    }

    /** What is left for the gear lever to move where its rails are not typed. */
    static List<TypedMember> forTheGearLever(List<TypedMember> members, List<TypedLever> levers) {
        Set<String> taken = levers.stream()
                .flatMap(lever -> lever.selector().rails().stream())
                .flatMap(rail -> rail.moves().stream())
                .map(Reference::id)
                .collect(Collectors.toSet());
        return members.stream().filter(member -> !taken.contains(member.base())).toList();
    }

    private static TypedLever lever(Item item, String id) {
        return new TypedLever(
                item.pointer(),
                id,
                LayoutReading.naming(item),
                SelectorReading.of(item, id + "-", List.of()),
                GearReading.references(item.get(CLUTCHES)));
    }

    private static Stream<TypedInnerClutch> clutches(List<TypedMember> members) {
        return members.stream().filter(TypedInnerClutch.class::isInstance).map(TypedInnerClutch.class::cast);
    }
}
