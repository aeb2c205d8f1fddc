package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** Finds where in a layout a set can stand, going by what its parts are and how they belong together. */
final class Placements {
    private static final String ANY_SHAFT = "shaft";

    private final Layout layout;
    private final List<Mesh> meshes;
    private final Map<SetShape, List<Map<String, String>>> spots = new EnumMap<>(SetShape.class);
    private final Map<ComponentKind, Set<String>> places = new EnumMap<>(ComponentKind.class);

    /** Where sets of each shape could stand in this layout, by role. */
    Placements(Layout layout) {
        this.layout = layout;
        this.meshes =
                layout.everyMesh().filter(mesh -> mesh.kind() != MeshKind.CHAIN).toList();
        spots.put(SetShape.PAIR, pairs());
        spots.put(SetShape.TRAIN, trains());
        spots.put(
                SetShape.SYNCHRONISER,
                layout.all(Sleeve.class).map(this::synchroniser).toList());
        spots.put(SetShape.FINAL_DRIVE, finalDrives());
        spots.put(SetShape.SPEED_DRIVE, List.of(Map.of("driving", Build.SPEED_DRIVING, "driven", Build.SPEED_DRIVEN)));
        for (ComponentKind kind : ComponentKind.values()) {
            places.put(kind, placesFor(kind));
        }
    }

    /** Every way that this set can stand in the layout. */
    List<Placement> of(PartSet set, Catalogue catalogue) {
        Map<String, CataloguePart> byRole = new LinkedHashMap<>();
        set.parts().forEach((role, number) -> catalogue.part(number).ifPresent(part -> byRole.put(role, part)));
        if (byRole.size() < set.parts().size()) {
            return List.of();
        }
        List<Placement> found = new ArrayList<>();
        switch (set.shape()) {
            case SINGLE ->
                byRole.values()
                        .forEach(part -> places.get(part.kind())
                                .forEach(place -> found.add(new Placement(set, Map.of(place, part)))));
            case SHAFT -> shaftSpots(byRole).forEach(spot -> place(set, byRole, spot, found));
            default -> spots.get(set.shape()).forEach(spot -> place(set, byRole, spot, found));
        }
        return found;
    }

    private Set<String> placesFor(ComponentKind kind) {
        if (kind == ComponentKind.SPEED_GEAR) {
            return new LinkedHashSet<>(List.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN));
        }
        return layout.parts().values().stream()
                .filter(part -> kind.canStandAt(part.kind()))
                .filter(part ->
                        !(part instanceof Bearing bearing) || (kind == ComponentKind.NEEDLES) == isUnderAGear(bearing))
                .map(Part::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private boolean isUnderAGear(Bearing bearing) {
        return layout.find(Gear.class, bearing.outer()).isPresent();
    }

    private List<Map<String, String>> pairs() {
        List<Map<String, String>> spots = new ArrayList<>();
        for (Mesh mesh : meshes) {
            spots.add(Map.of("gear", mesh.first(), "mate", mesh.second()));
            spots.add(Map.of("gear", mesh.second(), "mate", mesh.first()));
        }
        return spots;
    }

    private List<Map<String, String>> trains() {
        List<Map<String, String>> spots = new ArrayList<>();
        layout.all(Gear.class).map(Gear::id).forEach(idler -> {
            List<String> mates = meshes.stream()
                    .filter(mesh -> mesh.joins(idler))
                    .map(mesh -> mesh.other(idler))
                    .toList();
            for (String driving : mates) {
                for (String driven : mates) {
                    if (!driving.equals(driven)) {
                        spots.add(Map.of("driving", driving, "idler", idler, "driven", driven));
                    }
                }
            }
        });
        return spots;
    }

    private Map<String, String> synchroniser(Sleeve sleeve) {
        Map<String, String> spot = new LinkedHashMap<>();
        spot.put("sleeve", sleeve.id());
        spot.put("hub", sleeve.hub());
        layout.all(Fork.class)
                .filter(fork -> fork.member().equals(sleeve.id()))
                .findFirst()
                .ifPresent(fork -> spot.put("fork", fork.id()));
        layout.all(Fitting.class)
                .filter(part -> part.kind() == PartKind.KEYS)
                .filter(keys -> keys.of().filter(sleeve.id()::equals).isPresent())
                .findFirst()
                .ifPresent(keys -> spot.put("keys", keys.id()));
        ring(sleeve, Side.FRONT).ifPresent(ring -> spot.put("front-ring", ring));
        ring(sleeve, Side.REAR).ifPresent(ring -> spot.put("rear-ring", ring));
        return spot;
    }

    private Optional<String> ring(Sleeve sleeve, Side side) {
        return layout.members().stream()
                .filter(member -> member.part().equals(sleeve.id()))
                .flatMap(member -> member.at(side).stream())
                .filter(Engagement.Couples.class::isInstance)
                .flatMap(engagement -> ((Engagement.Couples) engagement).ring().stream())
                .findFirst();
    }

    private List<Map<String, String>> finalDrives() {
        List<Map<String, String>> spots = new ArrayList<>();
        layout.all(Differential.class)
                .forEach(differential -> differential
                        .ringGear()
                        .ifPresent(ring -> meshes.stream()
                                .filter(mesh -> mesh.joins(ring))
                                .forEach(mesh -> spots.add(Map.of(
                                        "pinion",
                                        mesh.other(ring),
                                        "ring-gear",
                                        ring,
                                        "differential",
                                        differential.id())))));
        return spots;
    }

    /**
     * The other parts of a shaft's set name the places that they are made for; where the shaft is named by its own place
     * too, or there is none, nothing is left open.
     */
    private List<Map<String, String>> shaftSpots(Map<String, CataloguePart> byRole) {
        Map<String, String> named = new LinkedHashMap<>();
        byRole.keySet().forEach(role -> named.put(role, role));
        if (!byRole.containsKey(ANY_SHAFT)) {
            return List.of(named);
        }
        return layout.all(Shaft.class)
                .filter(shaft -> byRole.keySet().stream().allMatch(role -> isOn(shaft, role)))
                .map(shaft -> {
                    Map<String, String> spot = new LinkedHashMap<>(named);
                    spot.put(ANY_SHAFT, shaft.id());
                    return spot;
                })
                .toList();
    }

    private boolean isOn(Shaft shaft, String place) {
        return layout.find(Gear.class, place)
                .filter(gear -> !gear.carrier().equals(shaft.id()))
                .isEmpty();
    }

    /** Not where the layout lacks a place that a part of the set would stand at. */
    private void place(
            PartSet set, Map<String, CataloguePart> byRole, Map<String, String> spot, List<Placement> found) {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        for (Map.Entry<String, CataloguePart> entry : byRole.entrySet()) {
            String place = spot.get(entry.getKey());
            if (place == null || !places.get(entry.getValue().kind()).contains(place)) {
                return;
            }
            parts.put(place, entry.getValue());
        }
        found.add(new Placement(set, parts));
    }
}
