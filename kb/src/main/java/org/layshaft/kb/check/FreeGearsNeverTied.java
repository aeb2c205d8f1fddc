package org.layshaft.kb.check;

import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;

/** Free gears that no sleeve ties and that hand nothing on: they turn along for nothing. An idler has two meshes. */
final class FreeGearsNeverTied implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Set<String> coupled = Coupling.all(layout).map(Coupling::to).collect(Collectors.toSet());
        layout.gears()
                .filter(gear -> gear.seat() == Seat.FREE && !coupled.contains(gear.id()))
                .filter(gear -> meshes(gear, layout) == 1)
                .forEach(gear -> report.doubtful(
                        gear.pointer(),
                        "No sleeve ties the free gear '%s', and it has one mesh only: it can drive nothing."
                                .formatted(gear.id()),
                        gear.id(),
                        "Put a sleeve next to it, or name it at a sleeve's 'front' or 'rear'."));
    }

    private static long meshes(TypedGear gear, TypedLayout layout) {
        return layout.meshes().stream().filter(mesh -> mesh.joins(gear.id())).count();
    }
}
