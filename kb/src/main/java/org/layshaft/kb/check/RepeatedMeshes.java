package org.layshaft.kb.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** Meshes that are typed twice, be it from either end. */
final class RepeatedMeshes implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        List<TypedMesh> seen = new ArrayList<>();
        for (TypedMesh mesh : layout.meshes()) {
            Optional<TypedMesh> before = seen.stream()
                    .filter(other -> other.isBetween(mesh.first(), mesh.second()))
                    .findFirst();
            before.ifPresent(first -> report.broken(
                    mesh.pointer(),
                    "The mesh of %s is typed twice, first on line %d."
                            .formatted(mesh.written(), report.line(first.pointer())),
                    mesh.second(),
                    "Keep one of the two: a mesh is typed once, at either gear."));
            seen.add(mesh);
        }
    }
}
