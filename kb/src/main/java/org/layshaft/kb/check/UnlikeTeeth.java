package org.layshaft.kb.check;

import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** Meshing gears whose teeth are not alike: another module, helix or pressure angle, or the wrong hand. */
final class UnlikeTeeth implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMesh mesh : layout.meshes()) {
            Optional<TypedGear> first = layout.gear(mesh.first());
            Optional<TypedGear> second = layout.gear(mesh.second());
            if (first.isPresent() && second.isPresent() && mesh.kind() != MeshKind.CHAIN) {
                compare(mesh, first.get(), second.get(), report);
            }
        }
    }

    /** The modules and spiral angles of a hypoid pair may differ. */
    private static void compare(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        if (!mesh.kind().isBevel()) {
            compareModules(mesh, first, second, report);
            compareHelices(mesh, first, second, report);
        }
        comparePressureAngles(mesh, first, second, report);
        compareHands(mesh, first, second, report);
    }

    private static void compareModules(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        if (first.moduleMm().isPresent()
                && second.moduleMm().isPresent()
                && !first.moduleMm().equals(second.moduleMm())) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: their normal modules differ.".formatted(mesh.written()),
                    "%s mm and %s mm"
                            .formatted(
                                    Millimetres.plain(first.moduleMm().getAsDouble()),
                                    Millimetres.plain(second.moduleMm().getAsDouble())),
                    "Give both the same 'module_mm', in the gears or for the whole layout.");
        }
    }

    private static void comparePressureAngles(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        if (Double.compare(first.pressureAngleDeg(), second.pressureAngleDeg()) != 0) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: their pressure angles differ.".formatted(mesh.written()),
                    "%s° and %s°"
                            .formatted(
                                    Millimetres.plain(first.pressureAngleDeg()),
                                    Millimetres.plain(second.pressureAngleDeg())),
                    "Give both the same 'pressure_angle_deg', in the gears or for the whole layout.");
        }
    }

    private static void compareHands(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        boolean alike = mesh.kind() == MeshKind.INTERNAL;
        if (first.hand().isPresent()
                && second.hand().isPresent()
                && first.hand().equals(second.hand()) != alike) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: they must wind %s."
                            .formatted(mesh.written(), alike ? "the same way" : "opposite ways"),
                    "%s and %s"
                            .formatted(
                                    first.hand().get().word(),
                                    second.hand().get().word()),
                    "Change the 'hand' of one of them.");
        }
    }

    private static void compareHelices(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        if (Double.compare(first.helixDeg(), second.helixDeg()) != 0) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: their helix angles differ.".formatted(mesh.written()),
                    "%s° and %s°".formatted(Millimetres.plain(first.helixDeg()), Millimetres.plain(second.helixDeg())),
                    "Give both the same 'helix_deg'; 0 is straight cut.");
        }
    }
}
