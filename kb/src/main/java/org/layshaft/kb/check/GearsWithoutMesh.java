package org.layshaft.kb.check;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;

/** Gears that mesh with nothing. A fixed gear that a sleeve couples may: it is there to tie two shafts in line. */
final class GearsWithoutMesh implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Set<String> meshing = layout.meshes().stream()
                .flatMap(mesh -> Stream.of(mesh.first(), mesh.second()))
                .collect(Collectors.toSet());
        Set<String> coupled = Coupling.all(layout).map(Coupling::to).collect(Collectors.toSet());
        layout.gears()
                .filter(gear -> !meshing.contains(gear.id()))
                .filter(gear -> gear.seat() != Seat.FIXED || !coupled.contains(gear.id()))
                .forEach(gear -> tell(gear, report));
    }

    private static void tell(TypedGear gear, Report report) {
        String slid = gear.seat() == Seat.SLIDING || gear.seat() == Seat.RIM
                ? "Say under 'front' or 'rear' what it comes into mesh with, as {\"meshes\": …}."
                : "Say with 'meshes', here or at the other gear, what it meshes with.";
        report.broken(gear.pointer(), "The gear '%s' meshes with nothing.".formatted(gear.id()), gear.id(), slid);
    }
}
