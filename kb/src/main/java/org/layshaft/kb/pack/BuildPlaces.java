package org.layshaft.kb.pack;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.reading.Located;

/** Holds what builds say of places against the layouts that they are builds of; a broken one has told enough itself. */
final class BuildPlaces {
    private static final Set<String> OF_THE_SPEED_DRIVE = Set.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN);

    private final Map<String, Layout> layouts = new HashMap<>();
    private final Set<String> brokenLayouts = new HashSet<>();
    private final Map<String, CataloguePart> parts = new HashMap<>();

    private BuildPlaces(List<ReadPack> packs, LayoutBuilding built) {
        packs.forEach(pack -> {
            built.layoutsOf(pack).forEach(layout -> layouts.putIfAbsent(layout.id(), layout));
            pack.layouts().stream()
                    .filter(layout -> layout.report().isBroken())
                    .forEach(layout -> brokenLayouts.add(layout.value().id().id()));
            pack.catalogue()
                    .parts()
                    .forEach(part -> parts.putIfAbsent(part.value().number(), part.value()));
        });
    }

    static void check(List<ReadPack> packs, LayoutBuilding built) {
        BuildPlaces places = new BuildPlaces(packs, built);
        packs.forEach(pack -> pack.catalogue().builds().stream()
                .filter(build -> !places.brokenLayouts.contains(build.value().layout()))
                .forEach(places::check));
    }

    private void check(Located<Build> build) {
        Layout layout = layouts.get(build.value().layout());
        if (layout == null) {
            build.broken(
                    "There is no layout '%s'.".formatted(build.value().layout()),
                    build.value().layout(),
                    Nearest.advice(build.value().layout(), new TreeSet<>(layouts.keySet())));
            return;
        }
        build.value().fitted().forEach((place, number) -> {
            Optional<CataloguePart> part = Optional.ofNullable(parts.get(number));
            part.ifPresent(there -> check(build, layout, place, there));
        });
    }

    private void check(Located<Build> build, Layout layout, String place, CataloguePart part) {
        String pointer = Pointers.child(Pointers.child(build.pointer(), "fitted"), place);
        boolean speedDrive = OF_THE_SPEED_DRIVE.contains(place);
        Optional<Part> there = layout.find(Part.class, place);
        if (!speedDrive && there.isEmpty()) {
            Set<String> ids = new TreeSet<>(layout.parts().keySet());
            ids.addAll(OF_THE_SPEED_DRIVE);
            build.report()
                    .broken(
                            pointer,
                            "%s has no place '%s'.".formatted(layout.name(), place),
                            place,
                            Nearest.advice(place, ids));
        } else if (speedDrive != (part.kind() == ComponentKind.SPEED_GEAR)
                || there.filter(at -> !part.kind().canStandAt(at.kind())).isPresent()) {
            build.report()
                    .broken(
                            pointer,
                            "Part %s is a %s, which cannot stand at '%s'."
                                    .formatted(part.number(), part.kind().spoken(), place),
                            part.number(),
                            there.map(at -> "At '%s' stands a %s."
                                            .formatted(place, at.kind().word().replace('-', ' ')))
                                    .orElse("There stands a speed gear."));
        } else {
            there.filter(Gear.class::isInstance)
                    .ifPresent(gear -> tellOtherTeeth(
                            build, pointer, (Gear) gear, part.facts().find(FactName.TEETH)));
        }
    }

    private static void tellOtherTeeth(Located<Build> build, String pointer, Gear gear, Optional<Fact> teeth) {
        teeth.filter(fact -> fact.number() != gear.teeth())
                .ifPresent(
                        fact -> build.report()
                                .doubtful(
                                        pointer,
                                        "The part has %s teeth, and the layout's %s has %d."
                                                .formatted(fact.text(), gear.name(), gear.teeth()),
                                        fact.text(),
                                        "Look which of the two is right; a box of other ratios is better told as a layout of its own."));
    }
}
