package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Shaft;

/**
 * Pitch radii in mm. All pairs between two lines share their centre distance, split by teeth, so that they touch even
 * where modules or helix angles are given loosely. Where no gear has a module, 1 mm stands for all of them.
 */
final class Radii {
    private final Layout layout;
    private final Lines lines;
    private final double usualModuleMm;
    private final Map<String, Double> radiusMm = new LinkedHashMap<>();
    private final Planets planets;
    private final Map<String, Double> spindleMm = new LinkedHashMap<>();

    Radii(Layout layout, Lines lines) {
        this.layout = layout;
        this.lines = lines;
        this.usualModuleMm = layout.all(Gear.class)
                .flatMapToDouble(gear -> gear.moduleMm().stream())
                .average()
                .orElse(1);
        this.planets = new Planets(layout);
        layout.all(Gear.class).forEach(gear -> radiusMm.put(gear.id(), nominalMm(gear)));
        share();
        planets.spindles().forEach(this::fit);
    }

    double ofMm(String gear) {
        return radiusMm.get(gear);
    }

    /** Of the axes of two gears in mesh; of two sprockets, without the chain between them. */
    double centreDistanceMm(Mesh mesh) {
        return mesh.kind() == MeshKind.INTERNAL
                ? Math.abs(ofMm(mesh.first()) - ofMm(mesh.second()))
                : ofMm(mesh.first()) + ofMm(mesh.second());
    }

    /** From the axis of an epicyclic set to the spindle of these planets. */
    double spindleMm(Shaft spindle) {
        return spindleMm.get(spindle.id());
    }

    /** Makes all that these planets mesh with touch them, the mean of the distances told being theirs. */
    private void fit(Shaft spindle) {
        List<Mesh> meshes = planets.meshesOf(spindle);
        double distance =
                meshes.stream().mapToDouble(this::centreDistanceMm).average().orElse(usualModuleMm * 20);
        spindleMm.put(spindle.id(), distance);
        meshes.stream().filter(mesh -> mesh.kind() == MeshKind.EXTERNAL).forEach(mesh -> split(mesh, distance));
        meshes.stream().filter(mesh -> mesh.kind() == MeshKind.INTERNAL).forEach(mesh -> {
            String planet = planets.isPlanet(mesh.first()) ? mesh.first() : mesh.second();
            radiusMm.put(mesh.other(planet), distance + ofMm(planet));
        });
    }

    private double nominalMm(Gear gear) {
        double transverse = gear.moduleMm().orElse(usualModuleMm) / Math.cos(Math.toRadians(gear.helixDeg()));
        return transverse * gear.teeth() / 2;
    }

    private void share() {
        Map<Set<String>, List<Mesh>> pairs = new LinkedHashMap<>();
        layout.everyMesh()
                .filter(this::isPair)
                .forEach(mesh -> pairs.computeIfAbsent(
                                Set.of(lines.of(layout.gear(mesh.first())), lines.of(layout.gear(mesh.second()))),
                                key -> new ArrayList<>())
                        .add(mesh));
        pairs.values().forEach(meshes -> {
            double distance = meshes.stream()
                    .mapToDouble(this::centreDistanceMm)
                    .average()
                    .orElseThrow();
            meshes.forEach(mesh -> split(mesh, distance));
        });
    }

    /** Whether neither gear meshes with a third, which would ask for two radii of one gear. */
    private boolean isPair(Mesh mesh) {
        if (mesh.kind() != MeshKind.EXTERNAL || planets.isPlanet(mesh.first()) || planets.isPlanet(mesh.second())) {
            return false;
        }
        boolean alone = layout.everyMesh()
                .noneMatch(other -> !other.equals(mesh) && (other.joins(mesh.first()) || other.joins(mesh.second())));
        return alone && !lines.of(layout.gear(mesh.first())).equals(lines.of(layout.gear(mesh.second())));
    }

    private void split(Mesh mesh, double distanceMm) {
        double first = layout.gear(mesh.first()).teeth();
        double second = layout.gear(mesh.second()).teeth();
        radiusMm.put(mesh.first(), distanceMm * first / (first + second));
        radiusMm.put(mesh.second(), distanceMm * second / (first + second));
    }
}
