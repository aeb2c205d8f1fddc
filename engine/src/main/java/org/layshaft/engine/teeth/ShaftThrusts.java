package org.layshaft.engine.teeth;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;

/**
 * Adds up the thrusts of the gears on each shaft. A gear that a fork moves leans on its fork, not on its shaft: it is
 * not counted.
 */
record ShaftThrusts(Layout layout, List<MeshForces> meshes) {

    /** Ids of the shafts, and of a differential with a ring gear, on which a gear carries torque. */
    Set<String> loaded() {
        return meshes.stream()
                .flatMap(mesh -> Stream.of(mesh.driver(), mesh.driven()))
                .filter(this::leansOnItsShaft)
                .map(gear -> layout.gear(gear).carrier())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    ShaftThrust of(String shaft) {
        List<Telling<List<ToothForce>>> onShaft = meshes.stream()
                .flatMap(mesh -> Stream.of(mesh.driver(), mesh.driven())
                        .filter(gear -> layout.gear(gear).carrier().equals(shaft))
                        .filter(this::leansOnItsShaft)
                        .filter(gear -> canThrust(layout.gear(gear)))
                        .map(gear -> mesh.on(gear).map(force -> Collections.nCopies(meshesOnOne(shaft, mesh), force))))
                .toList();
        Telling<Thrust> thrust = Telling.all(onShaft)
                .map(forces -> Thrust.of(forces.stream().flatMap(List::stream).toList()));
        return new ShaftThrust(shaft, thrust, thrust.then(sum -> takenBy(shaft, sum)));
    }

    private Telling<ThrustSeat> takenBy(String shaft, Thrust thrust) {
        if (thrust.toward().isEmpty()) {
            return Telling.told(new ThrustSeat.NothingToTake());
        }
        if (layout.find(Shaft.class, shaft).filter(Shaft::held).isPresent()) {
            return Telling.told(new ThrustSeat.TheCase());
        }
        List<ThrustBearing> bearings = layout.all(Bearing.class)
                .filter(bearing -> bearing.inner().equals(shaft))
                .filter(bearing -> layout.find(Gear.class, bearing.outer()).isEmpty())
                .map(bearing -> new ThrustBearing(bearing.name(), bearing.thrust()))
                .toList();
        return bearings.isEmpty()
                ? Telling.missing("any bearing of %s"
                        .formatted(layout.the(Part.class, shaft).name()))
                : thrust.takenBy(bearings);
    }

    /** The spindle of a planet has one of the meshes that all planets have together. */
    private int meshesOnOne(String shaft, MeshForces mesh) {
        return mesh.alike() / layout.find(Shaft.class, shaft).map(Shaft::count).orElse(1);
    }

    private boolean leansOnItsShaft(String gear) {
        Seat seat = layout.gear(gear).seat();
        return seat == Seat.FIXED || seat == Seat.FREE;
    }

    /** Straight-cut teeth on a cylinder have no thrust, whatever else is missing about them; nor has a chain. */
    private static boolean canThrust(Gear gear) {
        return gear.form() == GearForm.BEVEL || gear.form() != GearForm.SPROCKET && gear.helixDeg() != 0;
    }
}
