package org.layshaft.kb.check;

import java.util.Locale;
import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Crown;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** The side of a crown is told once for a pair, and a crown has its teeth on a cone. */
final class Crowns implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMesh mesh : layout.meshes()) {
            Optional<Crown> first = crown(mesh.first(), layout);
            Optional<Crown> second = crown(mesh.second(), layout);
            if (first.isPresent() && second.isPresent() && !first.equals(second)) {
                report.broken(
                        mesh.pointer(),
                        "%s contradict each other about the side of the crown.".formatted(mesh.written()),
                        "%s and %s".formatted(word(first.get()), word(second.get())),
                        "Type 'crown' at one of the two, the one that sits on the cross shaft.");
            }
        }
        layout.gears()
                .filter(gear -> gear.internal() && gear.crown().isPresent())
                .forEach(gear -> report.broken(
                        gear.pointer(),
                        "'%s' cannot have its teeth inside a ring and on a cone.".formatted(gear.id()),
                        gear.id(),
                        "Take out \"internal\" or 'crown'."));
    }

    private static Optional<Crown> crown(String gear, TypedLayout layout) {
        return layout.gear(gear).flatMap(TypedGear::crown);
    }

    private static String word(Crown crown) {
        return crown.name().toLowerCase(Locale.ROOT);
    }
}
