package org.layshaft.kb.check;

import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** A ring with teeth on its inside takes a gear that is smaller, and has its teeth on the outside. */
final class InternalGears implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMesh mesh : layout.meshes()) {
            if (mesh.kind() == MeshKind.INTERNAL) {
                Optional<TypedGear> first = layout.gear(mesh.first());
                Optional<TypedGear> second = layout.gear(mesh.second());
                if (first.isPresent() && second.isPresent()) {
                    check(mesh, first.get(), second.get(), report);
                }
            }
        }
    }

    private static void check(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        if (first.internal() && second.internal()) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: both have their teeth on the inside.".formatted(mesh.written()),
                    mesh.second(),
                    "Take \"internal\" from one of them.");
            return;
        }
        TypedGear ring = first.internal() ? first : second;
        TypedGear inside = first.internal() ? second : first;
        if (ring.teeth().isPresent()
                && inside.teeth().isPresent()
                && ring.teeth().getAsInt() <= inside.teeth().getAsInt()) {
            report.broken(
                    mesh.pointer(),
                    "'%s' does not fit into the ring '%s': it has as many teeth or more."
                            .formatted(inside.id(), ring.id()),
                    "%d in %d".formatted(inside.teeth().getAsInt(), ring.teeth().getAsInt()),
                    "Count the teeth again, and look which of the two is \"internal\".");
        }
    }
}
