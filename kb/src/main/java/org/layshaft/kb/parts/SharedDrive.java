package org.layshaft.kb.parts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/**
 * Countershafts that share the drive: two shafts of which like gears, fixed to each, meet one gear between them, in two
 * places along them or more. They carry alike only where they are timed to each other.
 */
final class SharedDrive {
    private final Map<String, Gear> gears = new HashMap<>();

    private SharedDrive(PartLedger ledger) {
        ledger.all(Gear.class).forEach(gear -> gears.put(gear.part().id(), gear.part()));
    }

    /** Where the first mesh of such countershafts stands in the file; empty where there are none. */
    static Optional<String> found(TypedLayout layout, PartLedger ledger) {
        SharedDrive shared = new SharedDrive(ledger);
        List<TypedMesh> meshes = layout.meshesAlwaysMade();
        Map<Set<String>, String> once = new HashMap<>();
        for (String between : shared.gears.keySet().stream().sorted().toList()) {
            List<Gear> mates = meshes.stream()
                    .map(TypedMesh::mesh)
                    .filter(mesh -> mesh.joins(between))
                    .flatMap(mesh -> shared.mate(mesh, between))
                    .toList();
            if (areAlike(mates)) {
                Set<String> shafts =
                        new TreeSet<>(mates.stream().map(Gear::carrier).toList());
                if (once.putIfAbsent(shafts, between) != null) {
                    return meshes.stream()
                            .filter(mesh -> mesh.mesh().joins(between))
                            .map(TypedMesh::pointer)
                            .findFirst();
                }
            }
        }
        return Optional.empty();
    }

    private Stream<Gear> mate(Mesh mesh, String between) {
        return Stream.ofNullable(gears.get(mesh.other(between))).filter(gear -> gear.seat() == Seat.FIXED);
    }

    private static boolean areAlike(List<Gear> mates) {
        return mates.size() > 1
                && mates.stream().map(Gear::teeth).distinct().count() == 1
                && mates.stream().map(Gear::carrier).distinct().count() == mates.size();
    }
}
