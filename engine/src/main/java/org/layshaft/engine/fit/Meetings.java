package org.layshaft.engine.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** Finds where the places of a layout meet. */
final class Meetings {
    private final Layout layout;
    private final Set<Meeting> meetings = new LinkedHashSet<>();

    private Meetings(Layout layout) {
        this.layout = layout;
    }

    static List<Meeting> of(Layout layout) {
        Meetings found = new Meetings(layout);
        layout.everyMesh()
                .filter(mesh -> mesh.kind() != MeshKind.CHAIN)
                .forEach(mesh -> found.add(MeetingKind.TEETH, mesh.first(), mesh.second()));
        layout.all(Gear.class)
                .filter(found::hasSeat)
                .forEach(gear -> found.add(MeetingKind.SEAT, gear.id(), gear.carrier()));
        layout.all(ClutchingTeeth.class)
                .forEach(teeth -> found.add(MeetingKind.CLUTCHING, teeth.gear(), teeth.sleeve()));
        layout.all(BlockingRing.class).forEach(found::ring);
        layout.all(Sleeve.class).forEach(sleeve -> found.add(MeetingKind.SLIDING, sleeve.id(), sleeve.hub()));
        layout.all(Fitting.class).filter(part -> part.kind() == PartKind.KEYS).forEach(found::keys);
        layout.all(Hub.class).forEach(hub -> found.add(MeetingKind.HUB, hub.id(), hub.shaft()));
        layout.all(Fork.class).forEach(fork -> {
            found.add(MeetingKind.FORK, fork.id(), fork.member());
            found.add(MeetingKind.RAIL, fork.id(), fork.rail());
        });
        layout.all(Bearing.class).forEach(found::bearing);
        layout.all(Differential.class)
                .forEach(differential -> differential
                        .ringGear()
                        .ifPresent(ring -> found.add(MeetingKind.RING_GEAR, ring, differential.id())));
        layout.all(HalfShaft.class).forEach(half -> found.add(MeetingKind.HALF_SHAFT, half.id(), half.differential()));
        found.add(MeetingKind.SPEED_DRIVE, Build.SPEED_DRIVING, Build.SPEED_DRIVEN);
        layout.all(Shaft.class)
                .filter(shaft -> !shaft.held())
                .forEach(shaft -> found.add(MeetingKind.THRUST, shaft.id(), shaft.id()));
        return List.copyOf(found.meetings);
    }

    private boolean hasSeat(Gear gear) {
        return gear.seat() != Seat.RIM
                && layout.find(Shaft.class, gear.carrier()).isPresent();
    }

    private void ring(BlockingRing ring) {
        add(MeetingKind.CONE, ring.gear(), ring.id());
        add(MeetingKind.RING, ring.id(), ring.sleeve());
        Optional<Sleeve> sleeve = layout.find(Sleeve.class, ring.sleeve());
        sleeve.ifPresent(on -> add(MeetingKind.KEYS, ring.id(), on.hub()));
    }

    private void keys(Fitting keys) {
        keys.of()
                .flatMap(sleeve -> layout.find(Sleeve.class, sleeve))
                .ifPresent(sleeve -> add(MeetingKind.KEY, keys.id(), sleeve.hub()));
    }

    /** Needles between a gear and its shaft belong to the seat of the gear. */
    private void bearing(Bearing bearing) {
        if (layout.find(Gear.class, bearing.outer()).isPresent()) {
            return;
        }
        add(MeetingKind.BEARING_ON_SHAFT, bearing.id(), bearing.inner());
        add(
                MeetingKind.BEARING_IN_CASE,
                bearing.id(),
                bearing.outer().equals(Bearing.CASE) ? Fitted.CASE : bearing.outer());
    }

    private void add(MeetingKind kind, String one, String other) {
        meetings.add(new Meeting(kind, one, other));
    }
}
