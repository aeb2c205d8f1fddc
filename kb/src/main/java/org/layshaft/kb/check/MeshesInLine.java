package org.layshaft.kb.check;

import java.util.Optional;
import org.layshaft.kb.json.Report;
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
                report.broken(
                        mesh.pointer(),
                        mesh.first().equals(mesh.second())
                                ? "The gear '%s' is said to mesh with itself.".formatted(mesh.first())
                                : "%s turn about the same line: they cannot mesh.".formatted(mesh.written()),
                        mesh.second(),
                        "Name a gear on a shaft beside this one.");
            }
        }
    }
}
