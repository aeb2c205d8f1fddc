package org.layshaft.engine.teeth;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/** The hands of helices that a layout tells, and those that follow from them mesh by mesh. */
final class Hands {
    private final Map<String, Hand> byGear = new HashMap<>();

    Hands(Layout layout) {
        List<Mesh> meshes =
                layout.everyMesh().filter(mesh -> mesh.kind() != MeshKind.CHAIN).toList();
        Deque<String> news = new ArrayDeque<>();
        layout.all(Gear.class)
                .forEach(gear -> gear.hand().ifPresent(hand -> {
                    byGear.put(gear.id(), hand);
                    news.add(gear.id());
                }));
        while (!news.isEmpty()) {
            String gear = news.remove();
            for (Mesh mesh : meshes) {
                if (mesh.joins(gear) && byGear.putIfAbsent(mesh.other(gear), across(mesh, byGear.get(gear))) == null) {
                    news.add(mesh.other(gear));
                }
            }
        }
    }

    Optional<Hand> of(String gear) {
        return Optional.ofNullable(byGear.get(gear));
    }

    /** External gears and bevels wind opposite ways, a gear and its internal gear the same way. */
    private static Hand across(Mesh mesh, Hand hand) {
        return mesh.kind() == MeshKind.INTERNAL ? hand : hand.opposite();
    }
}
