package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedShaft;

/** Which shafts lie in line, by a pilot bearing or because a sleeve of one couples a gear of the other. */
final class Axes {
    private final TypedLayout layout;

    /** One shaft of each line by the shafts of that line. */
    private final Map<String, String> lines = new HashMap<>();

    private Axes(TypedLayout layout) {
        this.layout = layout;
    }

    static Axes of(TypedLayout layout) {
        Axes axes = new Axes(layout);
        layout.shafts().forEach(shaft -> axes.lines.put(shaft.id(), shaft.id()));
        layout.shafts().forEach(axes::joinByPilots);
        Coupling.all(layout).forEach(axes::joinByCoupling);
        return axes;
    }

    /** Whether gears of these two shafts mesh, so that the shafts cannot be in line. */
    static boolean lieBeside(TypedLayout layout, String one, String other) {
        return layout.meshes().stream().anyMatch(mesh -> {
            Optional<String> first = layout.shaftOf(mesh.first()).map(TypedShaft::id);
            Optional<String> second = layout.shaftOf(mesh.second()).map(TypedShaft::id);
            return first.isPresent()
                    && second.isPresent()
                    && (first.get().equals(one) && second.get().equals(other)
                            || first.get().equals(other) && second.get().equals(one));
        });
    }

    /** What stands for the line that a gear turns about; empty where the gear does not exist. */
    Optional<String> lineOf(String gear) {
        Optional<String> ring = layout.differential()
                .filter(differential -> differential.ringGear().id().equals(gear))
                .map(TypedDifferential::id);
        return ring.or(() -> layout.shaftOf(gear).map(shaft -> lines.get(shaft.id())));
    }

    /** The two lines of a mesh, in an order of their own; empty where a gear does not exist or both are one. */
    Optional<String> linesOf(TypedMesh mesh) {
        Optional<String> first = lineOf(mesh.first());
        Optional<String> second = lineOf(mesh.second());
        if (first.isEmpty() || second.isEmpty() || first.equals(second)) {
            return Optional.empty();
        }
        return Optional.of(
                first.get().compareTo(second.get()) < 0
                        ? first.get() + " and " + second.get()
                        : second.get() + " and " + first.get());
    }

    private void joinByPilots(TypedShaft shaft) {
        for (TypedItem item : shaft.along()) {
            if (item instanceof TypedBearing bearing) {
                bearing.in().ifPresent(in -> join(shaft.id(), in.id()));
            }
        }
    }

    private void joinByCoupling(Coupling coupling) {
        Optional<TypedShaft> own = layout.shaftOf(coupling.member().id());
        Optional<TypedShaft> other = layout.shaftOf(coupling.gear());
        if (own.isPresent() && other.isPresent()) {
            join(own.get().id(), other.get().id());
        }
    }

    private void join(String one, String other) {
        if (lines.containsKey(one) && lines.containsKey(other) && !lieBeside(layout, one, other)) {
            String kept = lines.get(one);
            String replaced = lines.get(other);
            lines.replaceAll((shaft, line) -> line.equals(replaced) ? kept : line);
        }
    }
}
