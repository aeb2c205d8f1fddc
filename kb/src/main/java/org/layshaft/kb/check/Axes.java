package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedDogs;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedShaft;

/** Which shafts lie in line, by a pilot bearing or because a sleeve of one couples a gear of the other. */
final class Axes {
    /** What each gear turns about: a shaft, or the differential for its ring gear. */
    private final Map<String, String> shaftOf = new HashMap<>();

    /** Pairs of shafts whose gears mesh, so that they cannot be in line. */
    private final Set<Set<String>> sideBySide = new HashSet<>();

    /** One shaft of each line by the shafts of that line. */
    private final Map<String, String> lines = new HashMap<>();

    private Axes(TypedLayout layout) {
        layout.gears()
                .forEach(gear ->
                        layout.shaftOf(gear.id()).ifPresent(shaft -> shaftOf.putIfAbsent(gear.id(), shaft.id())));
        layout.differentials()
                .forEach(differential ->
                        differential.ringGear().ifPresent(ring -> shaftOf.putIfAbsent(ring.id(), differential.id())));
        layout.differentials().forEach(each -> shaftOf.putIfAbsent(each.id(), each.id()));
        dogs(layout).forEach((dogs, shaft) -> shaftOf.putIfAbsent(dogs, shaft));
        layout.meshes().stream()
                .filter(mesh -> shaftOf.containsKey(mesh.first()) && shaftOf.containsKey(mesh.second()))
                .map(mesh -> pair(shaftOf.get(mesh.first()), shaftOf.get(mesh.second())))
                .forEach(sideBySide::add);
        shaftOf.values().forEach(shaft -> lines.put(shaft, shaft));
        layout.shafts().forEach(shaft -> lines.put(shaft.id(), shaft.id()));
    }

    static Axes of(TypedLayout layout) {
        Axes axes = besidesCouplings(layout);
        Coupling.all(layout)
                .forEach(coupling -> layout.shaftOf(coupling.member().id())
                        .ifPresent(own -> axes.join(own.id(), axes.shaftOf.get(coupling.to()))));
        return axes;
    }

    /** The same without what only follows from what sleeves are said to couple. */
    static Axes besidesCouplings(TypedLayout layout) {
        Axes axes = new Axes(layout);
        layout.shafts().forEach(axes::joinByPilots);
        layout.differentials().forEach(axes::joinByDifferential);
        axes.joinByPlanets(layout);
        return axes;
    }

    /** Whether gears of these two shafts mesh, so that the shafts cannot be in line. */
    boolean lieSideBySide(String one, String other) {
        return sideBySide.contains(pair(one, other));
    }

    /** What stands for the line that a gear, dog ring or differential turns about; empty where it does not exist. */
    Optional<String> lineOf(String gear) {
        return Optional.ofNullable(shaftOf.get(gear)).map(lines::get);
    }

    /** What stands for the line of a shaft; empty where it does not exist. */
    Optional<String> lineOfShaft(String shaft) {
        return Optional.ofNullable(lines.get(shaft));
    }

    /** The two lines of a mesh; empty where a gear does not exist or both are one. */
    Optional<Set<String>> linesOf(TypedMesh mesh) {
        Optional<String> first = lineOf(mesh.first());
        Optional<String> second = lineOf(mesh.second());
        return first.isPresent() && second.isPresent() && !first.equals(second)
                ? Optional.of(pair(first.get(), second.get()))
                : Optional.empty();
    }

    private void joinByPilots(TypedShaft shaft) {
        for (TypedItem item : shaft.along()) {
            if (item instanceof TypedBearing bearing) {
                bearing.in().ifPresent(in -> join(shaft.id(), in.id()));
            }
        }
    }

    /** What drives the case of a bevel differential, and its two sides, turn about one line. */
    private void joinByDifferential(TypedDifferential differential) {
        differential.on().ifPresent(on -> join(differential.id(), on.id()));
        differential.sideIds().forEach(side -> join(differential.id(), side));
    }

    /** What meshes with a planet turns about the line of the planet's carrier. */
    private void joinByPlanets(TypedLayout layout) {
        for (TypedMesh mesh : layout.meshes()) {
            joinByPlanet(mesh.first(), mesh.second(), layout);
            joinByPlanet(mesh.second(), mesh.first(), layout);
        }
    }

    private void joinByPlanet(String planet, String mate, TypedLayout layout) {
        boolean mateIsCarried =
                layout.shaftOf(mate).flatMap(TypedShaft::carriedBy).isPresent();
        Optional<Reference> carrier = layout.shaftOf(planet).flatMap(TypedShaft::carriedBy);
        if (carrier.isPresent() && !mateIsCarried && shaftOf.containsKey(mate)) {
            join(carrier.get().id(), shaftOf.get(mate));
        }
    }

    private static Map<String, String> dogs(TypedLayout layout) {
        Map<String, String> dogs = new HashMap<>();
        layout.shafts()
                .forEach(shaft -> shaft.along().stream()
                        .filter(TypedDogs.class::isInstance)
                        .forEach(item -> dogs.putIfAbsent(item.id(), shaft.id())));
        return dogs;
    }

    private void join(String one, String other) {
        if (lines.containsKey(one) && lines.containsKey(other) && !lieSideBySide(one, other)) {
            String kept = lines.get(one);
            String replaced = lines.get(other);
            lines.replaceAll((shaft, line) -> line.equals(replaced) ? kept : line);
        }
    }

    /** In no order; of one where both are the same. */
    private static Set<String> pair(String one, String other) {
        return new HashSet<>(List.of(one, other));
    }
}
