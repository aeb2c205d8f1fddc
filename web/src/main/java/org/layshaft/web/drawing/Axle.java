package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Shaft;

/**
 * An axle that lies across the shafts, its crown driven by a bevel or hypoid pinion. It is drawn turned into the plane of
 * the drawing: the left wheel at the foot, as one sees it from above with the front on the left.
 *
 * @param kind on which side of the pinion the crown lies
 * @param atRear whether it lies behind its pinion
 */
record Axle(String differential, String crown, String pinion, MeshKind kind, boolean atRear) {
    /** Half the length of a crown seen on its edge. */
    static final double CROWN = 92;

    static final double CROWN_THICK = 18;
    static final double PINION_HALF = 19;
    static final double CASE_HALF = 40;
    static final double CASE_HIGH = 42;
    /** From the middle of the axle to that of a wheel. */
    static final double TO_WHEEL = 142;

    private static final double LEAST_PINION = 20;
    private static final double GREATEST_PINION = 46;

    /** The axles of a layout that can be drawn so: with half-shafts, and a crown that one bevel pinion on a shaft drives. */
    static List<Axle> across(Layout layout) {
        return layout.all(Differential.class)
                .flatMap(differential -> of(layout, differential).stream())
                .toList();
    }

    private static Optional<Axle> of(Layout layout, Differential differential) {
        boolean toWheels = differential.sides().stream()
                .allMatch(side -> layout.find(HalfShaft.class, side).isPresent());
        List<Mesh> meshes = differential.ringGear().stream()
                .flatMap(ring -> layout.meshes().stream().filter(mesh -> mesh.joins(ring)))
                .toList();
        if (!toWheels || meshes.size() != 1 || !meshes.get(0).kind().isBevel()) {
            return Optional.empty();
        }
        String crown = differential.ringGear().orElseThrow();
        String pinion = meshes.get(0).other(crown);
        return layout.find(Shaft.class, layout.gear(pinion).carrier())
                .filter(shaft -> shaft.carriedBy().isEmpty())
                .map(shaft ->
                        new Axle(differential.id(), crown, pinion, meshes.get(0).kind(), atRear(shaft, pinion)));
    }

    private static boolean atRear(Shaft shaft, String pinion) {
        return 2 * shaft.along().indexOf(pinion) >= shaft.along().size() - 1;
    }

    double pinionRadius(Layout layout) {
        double wanted = CROWN * layout.gear(pinion).teeth() / layout.gear(crown).teeth();
        return Math.max(LEAST_PINION, Math.min(GREATEST_PINION, wanted));
    }

    /** From the middle of the pinion to that of the axle, to the rear positive. */
    double behindPinion() {
        return (atRear ? 1 : -1) * (CROWN - PINION_HALF + 3);
    }

    /** Up is -1, down 1: a crown on the left of its pinion lies below, as the left wheel does. */
    int crownWay() {
        return kind == MeshKind.BEVEL ? 1 : -1;
    }

    /** Up is -1, down 1: the first half-shaft is the left one, and lies below. */
    static int way(Differential differential, String side) {
        return differential.sides().indexOf(side) == 0 ? 1 : -1;
    }

    /** Whether this is its crown or its pinion. */
    boolean joins(Gear gear) {
        return Stream.of(crown, pinion).anyMatch(gear.id()::equals);
    }
}
