package org.layshaft.kb.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedShaft;

/** Shafts and gears that nothing ties to the input, whatever is engaged. */
final class Unreachable implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        if (layout.shaft(layout.input().id()).isEmpty()) {
            return;
        }
        Set<String> reached = reached(layout);
        for (TypedShaft shaft : layout.shafts()) {
            if (!shaft.held() && !shaft.workingItems().isEmpty() && !reached.contains(shaft.id())) {
                tell("shaft", shaft.id(), shaft.pointer(), report);
            }
        }
        layout.gears()
                .filter(gear -> turnsAlone(gear, layout) && !reached.contains(gear.id()))
                .filter(gear -> layout.meshes().stream().anyMatch(mesh -> mesh.joins(gear.id())))
                .forEach(gear -> tell("gear", gear.id(), gear.pointer(), report));
        layout.differentials().stream()
                .filter(differential -> !reached.contains(differential.id()))
                .forEach(differential -> tell("differential", differential.id(), differential.pointer(), report));
    }

    private static void tell(String kind, String id, String pointer, Report report) {
        report.broken(
                pointer,
                "Nothing ties the %s '%s' to the input, whatever is engaged.".formatted(kind, id),
                id,
                "Look for a mesh, a sleeve or a pilot that is missing between the two.");
    }

    private static Set<String> reached(TypedLayout layout) {
        Map<String, Set<String>> ties = ties(layout);
        Set<String> reached = new HashSet<>(Set.of(layout.input().id()));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            for (String next : ties.getOrDefault(open.remove(), Set.of())) {
                if (reached.add(next)) {
                    open.add(next);
                }
            }
        }
        return reached;
    }

    private static Map<String, Set<String>> ties(TypedLayout layout) {
        Map<String, Set<String>> ties = new HashMap<>();
        for (TypedMesh mesh : layout.meshes()) {
            tie(body(mesh.first(), layout), body(mesh.second(), layout), ties);
        }
        Coupling.all(layout)
                .forEach(coupling -> tie(
                        coupled(coupling.to(), layout),
                        layout.shaftOf(coupling.member().id()).map(TypedShaft::id),
                        ties));
        layout.shafts()
                .forEach(shaft -> tie(Optional.of(shaft.id()), shaft.carriedBy().map(Reference::id), ties));
        layout.gears()
                .forEach(gear -> tie(
                        body(gear.id(), layout),
                        layout.shaftOf(gear.id()).flatMap(TypedShaft::carriedBy).map(Reference::id),
                        ties));
        layout.joins()
                .forEach(join ->
                        tie(Optional.of(join.from().id()), Optional.of(join.to().id()), ties));
        layout.differentials().forEach(differential -> tie(differential, ties));
        layout.members().stream()
                .filter(TypedInnerClutch.class::isInstance)
                .map(TypedInnerClutch.class::cast)
                .forEach(clutch -> tie(
                        layout.shaftOf(clutch.id()).map(TypedShaft::id),
                        Optional.of(clutch.drives().id()),
                        ties));
        return ties;
    }

    private static void tie(TypedDifferential differential, Map<String, Set<String>> ties) {
        Optional<String> own = Optional.of(differential.id());
        tie(own, differential.on().map(Reference::id), ties);
        differential.sideIds().forEach(side -> tie(own, Optional.of(side), ties));
    }

    /** What a sleeve ties: a gear's body, the shaft of a dog ring if it turns, or a differential. */
    private static Optional<String> coupled(String id, TypedLayout layout) {
        if (layout.gear(id).isPresent()) {
            return body(id, layout);
        }
        return layout.shaftOf(id)
                .filter(shaft -> !shaft.held())
                .map(TypedShaft::id)
                .or(() -> layout.differential(id).map(TypedDifferential::id));
    }

    private static void tie(Optional<String> one, Optional<String> other, Map<String, Set<String>> ties) {
        if (one.isPresent() && other.isPresent()) {
            ties.computeIfAbsent(one.get(), body -> new HashSet<>()).add(other.get());
            ties.computeIfAbsent(other.get(), body -> new HashSet<>()).add(one.get());
        }
    }

    /** What turns with a gear: its shaft, the differential, or the gear alone. */
    private static Optional<String> body(String id, TypedLayout layout) {
        return layout.gear(id).flatMap(gear -> {
            if (turnsAlone(gear, layout)) {
                return Optional.of(gear.id());
            }
            return layout.shaftOf(gear.id())
                    .map(TypedShaft::id)
                    .or(() -> layout.differentials().stream()
                            .filter(differential -> differential
                                    .ringGear()
                                    .filter(ring -> ring.id().equals(id))
                                    .isPresent())
                            .map(TypedDifferential::id)
                            .findFirst());
        });
    }

    private static boolean turnsAlone(TypedGear gear, TypedLayout layout) {
        return gear.seat() == Seat.FREE
                || layout.shaftOf(gear.id()).map(TypedShaft::held).orElse(false);
    }
}
