package org.layshaft.kb.check;

import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** Gears said to mesh that turn about one and the same line: with themselves, or with one on their own shaft. */
final class MeshesInLine implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Axes axes = Axes.of(layout);
        for (TypedMesh mesh : layout.meshes()) {
            Optional<String> line = axes.lineOf(mesh.first());
            if (line.isPresent() && line.equals(axes.lineOf(mesh.second()))) {
                report.broken(mesh.pointer(), what(mesh), mesh.second(), "Name a gear on a shaft beside this one.");
            }
        }
    }

    private static String what(TypedMesh mesh) {
        if (mesh.first().equals(mesh.second())) {
            return "The gear '%s' is said to mesh with itself.".formatted(mesh.first());
        }
        return "%s turn about the same line: %s."
                .formatted(
                        mesh.written(), mesh.kind() == MeshKind.CHAIN ? "no chain can join them" : "they cannot mesh");
    }
}
