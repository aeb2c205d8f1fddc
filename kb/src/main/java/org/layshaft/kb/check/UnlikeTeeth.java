package org.layshaft.kb.check;

import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** Meshing gears whose teeth are not alike: another module, or another helix angle. */
final class UnlikeTeeth implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMesh mesh : layout.meshes()) {
            Optional<TypedGear> first = layout.gear(mesh.first());
            Optional<TypedGear> second = layout.gear(mesh.second());
            if (first.isPresent() && second.isPresent()) {
                if (mesh.kind() == MeshKind.CHAIN || mesh.kind().isBevel()) {
                    continue;
                }
                compareModules(mesh, first.get(), second.get(), report);
                compareHelices(mesh, first.get(), second.get(), report);
                compareHands(mesh, first.get(), second.get(), report);
            }
        }
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

    private static void compareHands(TypedMesh mesh, TypedGear first, TypedGear second, Report report) {
        boolean alike = mesh.kind() == MeshKind.INTERNAL;
        if (first.hand().isPresent()
                && second.hand().isPresent()
                && first.hand().equals(second.hand()) != alike) {
            report.broken(
                    mesh.pointer(),
                    "%s cannot mesh: %s helices must wind %s."
                            .formatted(
                                    mesh.written(),
                                    alike ? "the" : "two external",
                                    alike ? "the same way" : "opposite ways"),
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
