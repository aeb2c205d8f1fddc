package org.layshaft.engine.swap;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.teeth.LoadedPair;
import org.layshaft.engine.teeth.Toothing;
import org.layshaft.engine.teeth.Turn;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/** Looks at the pairs of which a change touches a gear. */
record PairsTouched(Layout before, Layout after, ContactRatios contacts) {

    List<PairComparison> by(Change change) {
        List<String> touched = change.meshesTouched(before).map(Mesh::id).toList();
        return after.everyMesh()
                .filter(mesh -> touched.contains(mesh.id()))
                .map(mesh -> new PairComparison(
                        mesh, contacts.of(before, mesh), contacts.of(after, mesh), unlike(after, mesh)))
                .toList();
    }

    /** Gears on one chain have teeth for its links; nothing more of them is stated. */
    private static List<String> unlike(Layout layout, Mesh mesh) {
        return mesh.kind() == MeshKind.CHAIN
                ? List.of()
                : new LoadedPair(
                                toothing(layout.gear(mesh.first())),
                                toothing(layout.gear(mesh.second())),
                                0,
                                Turn.CLOCKWISE)
                        .unlike();
    }

    private static Toothing toothing(Gear gear) {
        return new Toothing(
                gear.name(),
                gear.form(),
                gear.teeth(),
                gear.moduleMm(),
                OptionalDouble.of(gear.helixDeg()),
                gear.hand(),
                OptionalDouble.of(gear.pressureAngleDeg()),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
