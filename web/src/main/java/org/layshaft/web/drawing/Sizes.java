package org.layshaft.web.drawing;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** How long things are along the shafts. Lengths are by kind, not to scale: a layout does not tell them. */
final class Sizes {
    static final double SHAFT_RADIUS = 8;
    static final double NOSE_RADIUS = 5;
    /** The room round a shaft in which the needles of a free gear run. */
    static final double NEEDLE_GAP = 6;

    /** What a hollow shaft has round the shaft that runs in it. */
    static final double TUBE = 5;
    /** Of the spindle of a planet. */
    static final double SPINDLE_RADIUS = 4;
    /** On either side of an epicyclic set, for the arms of the carrier and the web of the ring. */
    static final double BESIDE_PLANETS = 24;

    /** From the last figure of a unit, or the first, to the middle between it and its neighbour. */
    static final double BETWEEN_UNITS = 34;

    static final double GAP = 8;
    /** Between a gear and the sleeve that couples it: clutching teeth, blocking ring and some air. */
    static final double COUPLING_GAP = 27;

    static final double CLUTCHING_TEETH = 10;
    static final double RING = 9;

    private static final double GEAR_HALF = 21;
    private static final double SLID_GEAR_HALF = 14;
    private static final double SLEEVE_HALF = 23;
    private static final double BEARING_HALF = 10;
    private static final double NEEDLES_HALF = 8;
    private static final double DOGS_HALF = 6;
    private static final double JOINT_HALF = 7;
    private static final double DIFFERENTIAL_HALF = 46;

    private final Layout layout;
    private final Set<String> slid;
    private final List<Axle> axles;

    Sizes(Layout layout) {
        this.layout = layout;
        this.axles = Axle.across(layout);
        // Gears that a fork brings into mesh are narrow, so that the slide stays short.
        this.slid = slidMeshes(layout)
                .flatMap(mesh -> Stream.of(mesh.first(), mesh.second()))
                .collect(Collectors.toSet());
    }

    /** The meshes that a fork makes. */
    static Stream<Mesh> slidMeshes(Layout layout) {
        return layout.members().stream()
                .flatMap(member ->
                        member.sides().keySet().stream().flatMap(side -> slidMeshes(layout, member.part(), side)));
    }

    /** The meshes that a fork makes when it takes this sleeve or sliding gear to that side. */
    static Stream<Mesh> slidMeshes(Layout layout, String member, Side side) {
        return layout.members().stream()
                .filter(one -> one.part().equals(member))
                .flatMap(one -> one.at(side).stream())
                .filter(Engagement.Meshes.class::isInstance)
                .flatMap(engagement -> ((Engagement.Meshes) engagement).meshes().stream());
    }

    double half(String id) {
        Part part = layout.parts().get(id);
        if (part instanceof Gear gear) {
            if (axle(axle -> axle.pinion().equals(id))) {
                return Axle.PINION_HALF;
            }
            return slid.contains(id) || gear.seat() == Seat.SLIDING ? SLID_GEAR_HALF : GEAR_HALF;
        }
        if (part instanceof DogRing) {
            return DOGS_HALF;
        }
        if (part instanceof Joint) {
            return JOINT_HALF;
        }
        if (part instanceof Clutch) {
            return InnerClutch.HALF;
        }
        if (part instanceof Sleeve) {
            return SLEEVE_HALF;
        }
        if (part instanceof Bearing bearing) {
            return bearing.outer().equals(Bearing.CASE) ? BEARING_HALF : NEEDLES_HALF;
        }
        return part instanceof Differential ? differential(id) : GEAR_HALF;
    }

    private double differential(String id) {
        return axle(axle -> axle.differential().equals(id)) ? Axle.CASE_HALF : DIFFERENTIAL_HALF;
    }

    private boolean axle(Predicate<Axle> wanted) {
        return axles.stream().anyMatch(wanted);
    }
}
