package org.layshaft.kb.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedPlace;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** Every place of a drum pushes rails to where they engage something, each place others, and all sides are used. */
final class DrumPlaces implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        layout.selectors().stream()
                .filter(selector -> !selector.drum().isEmpty())
                .forEach(selector -> check(selector, layout, report));
    }

    private static void check(TypedSelector selector, TypedLayout layout, Report report) {
        Map<String, TypedRail> rails =
                selector.rails().stream().collect(Collectors.toMap(TypedRail::base, rail -> rail, (one, other) -> one));
        Map<Map<String, Side>, TypedPlace> first = new HashMap<>();
        for (TypedPlace place : selector.drum()) {
            place.pushes()
                    .forEach((rail, side) -> Optional.ofNullable(rails.get(rail.id()))
                            .filter(known -> !EffectiveSides.of(known, layout).contains(side))
                            .ifPresent(known -> tellIdle(rail, side, report)));
            TypedPlace before = first.putIfAbsent(byId(place), place);
            if (before != null && !place.pushes().isEmpty()) {
                report.broken(
                        place.pointer(),
                        "Two places of the drum push the same, the other on line %d."
                                .formatted(report.line(before.pointer())),
                        written(place),
                        "Take one of them out, or look at the sides.");
            }
        }
        rails.values().forEach(rail -> tellUnused(rail, selector, layout, report));
    }

    private static void tellIdle(Reference rail, Side side, Report report) {
        report.broken(
                rail.pointer(),
                "The drum pushes the rail '%s' to the %s, where it engages nothing.".formatted(rail.id(), side.word()),
                side.word(),
                "Push it to the other side, or name what its sleeve engages there.");
    }

    private static void tellUnused(TypedRail rail, TypedSelector selector, TypedLayout layout, Report report) {
        List<String> unused = new ArrayList<>();
        for (Side side : EffectiveSides.of(rail, layout)) {
            boolean pushed =
                    selector.drum().stream().anyMatch(place -> byId(place).get(rail.base()) == side);
            if (!pushed) {
                unused.add(side.word());
            }
        }
        if (!unused.isEmpty()) {
            report.doubtful(
                    rail.pointer(),
                    "No place of the drum pushes the rail '%s' to the %s, where it would engage something."
                            .formatted(rail.base(), String.join(" or ", unused)),
                    rail.base(),
                    "Add the place to the 'drum'.");
        }
    }

    private static String written(TypedPlace place) {
        return place.pushes().entrySet().stream()
                .map(push -> push.getKey().id() + " " + push.getValue().word())
                .collect(Collectors.joining(", "));
    }

    private static Map<String, Side> byId(TypedPlace place) {
        Map<String, Side> pushes = new HashMap<>();
        place.pushes().forEach((rail, side) -> pushes.put(rail.id(), side));
        return pushes;
    }
}
