package org.layshaft.kb.check;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;

/** Gears said to be of two forms at once: in mesh beside a shaft, across one, or by a chain. */
final class MixedTeeth implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        layout.gears().forEach(gear -> {
            Set<String> ways = ways(gear, layout);
            if (ways.size() > 1) {
                report.broken(
                        gear.pointer(),
                        "'%s' cannot be a %s at once.".formatted(gear.id(), String.join(" and a ", ways)),
                        gear.id(),
                        "Type two gears on one shaft, each with its own teeth.");
            }
        });
    }

    private static Set<String> ways(TypedGear gear, TypedLayout layout) {
        return layout.meshes().stream()
                .filter(mesh -> mesh.joins(gear.id()))
                .map(mesh -> way(mesh.kind()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String way(MeshKind kind) {
        return switch (kind) {
            case EXTERNAL, INTERNAL -> "spur or helical gear";
            case CHAIN -> "sprocket";
            case BEVEL, BEVEL_OPPOSITE -> "bevel gear";
        };
    }
}
