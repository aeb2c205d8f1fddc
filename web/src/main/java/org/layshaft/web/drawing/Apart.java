package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/**
 * How far two lines lie apart, by the gears that mesh between them.
 *
 * @param mm centre distance in mm; of sprockets what they would have without a chain
 * @param told whether it follows from modules and teeth that are told, without profile shift
 * @param chain whether it is a chain that joins them, which may be of any length
 */
record Apart(String one, String other, double mm, boolean told, boolean chain) {
    /** Chains are drawn with so much more between their sprockets. */
    private static final double CHAIN_LONGER = 1.25;

    boolean joins(String line) {
        return one.equals(line) || other.equals(line);
    }

    String otherThan(String line) {
        return one.equals(line) ? other : one;
    }

    /** Between every two lines that gears join which stay in their places; the largest where several are told. */
    static List<Apart> all(Layout layout, Lines lines, Radii radii, Planets planets) {
        Map<Set<String>, Apart> all = new LinkedHashMap<>();
        layout.everyMesh()
                .filter(mesh -> !mesh.kind().isBevel())
                .filter(mesh -> !planets.isPlanet(mesh.first()) && !planets.isPlanet(mesh.second()))
                .forEach(mesh -> {
                    String one = lines.of(layout.gear(mesh.first()));
                    String other = lines.of(layout.gear(mesh.second()));
                    if (!one.equals(other)) {
                        all.merge(Set.of(one, other), of(layout, radii, mesh, one, other), Apart::wider);
                    }
                });
        return new ArrayList<>(all.values());
    }

    private static Apart of(Layout layout, Radii radii, Mesh mesh, String one, String other) {
        boolean chain = mesh.kind() == MeshKind.CHAIN;
        boolean told = !chain
                && Stream.of(mesh.first(), mesh.second())
                        .map(layout::gear)
                        .map(Gear::moduleMm)
                        .allMatch(module -> module.isPresent());
        return new Apart(one, other, radii.centreDistanceMm(mesh) * (chain ? CHAIN_LONGER : 1), told, chain);
    }

    /** A chain is drawn long enough for all about its two axes to lie clear. */
    Apart clearOf(double reachMm) {
        return chain ? new Apart(one, other, Math.max(mm, reachMm), told, true) : this;
    }

    private Apart wider(Apart with) {
        Apart wider = with.mm > mm ? with : this;
        return new Apart(one, other, wider.mm, told && with.told, chain && with.chain);
    }
}
