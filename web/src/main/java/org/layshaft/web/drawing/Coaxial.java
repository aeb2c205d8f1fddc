package org.layshaft.web.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Sleeve;

/**
 * Which shafts and differentials must turn about one axis: those that run in one another, that a sleeve or clutch ties,
 * that a differential shares the turning between, and those of an epicyclic set, but for its planets.
 */
final class Coaxial {
    private final Layout layout;
    private final Map<String, String> axisOf = new LinkedHashMap<>();

    Coaxial(Layout layout) {
        this.layout = layout;
        layout.all(Shaft.class).forEach(shaft -> axisOf.put(shaft.id(), shaft.id()));
        layout.all(Differential.class).forEach(differential -> axisOf.put(differential.id(), differential.id()));
        Lines.between(layout).forEach(bearing -> join(bearing.outer(), bearing.inner()));
        layout.all(Differential.class)
                .forEach(differential -> Stream.concat(differential.shaft().stream(), differential.sides().stream())
                        .filter(axisOf::containsKey)
                        .forEach(shaft -> join(shaft, differential.id())));
        layout.members().forEach(this::joinCoupled);
        layout.all(Joint.class).forEach(joint -> join(joint.from(), joint.to()));
        layout.all(Clutch.class)
                .forEach(clutch -> clutch.drivenBy().ifPresent(driver -> join(driver, clutch.drives())));
        layout.all(Shaft.class)
                .filter(shaft -> shaft.carriedBy().isPresent())
                .forEach(planets -> joinSet(planets, planets.carriedBy().orElseThrow()));
    }

    /** By shaft or differential, the first of its axis. */
    Map<String, String> axes() {
        return axisOf;
    }

    /** What a gear, dog ring or sleeve sits on in the end: a shaft or a differential. */
    static String carrier(Layout layout, String id) {
        return layout.find(Gear.class, id)
                .map(gear -> gear.seat() == Seat.RIM ? carrier(layout, gear.carrier()) : gear.carrier())
                .or(() -> layout.find(DogRing.class, id).map(DogRing::shaft))
                .or(() -> layout.find(Sleeve.class, id).map(Sleeve::shaft))
                .or(() -> layout.find(Joint.class, id).map(Joint::from))
                .orElse(id);
    }

    private void joinCoupled(ShiftMember member) {
        member.sides().values().stream()
                .filter(Engagement.Couples.class::isInstance)
                .map(engagement -> ((Engagement.Couples) engagement).to())
                .forEach(to -> join(carrier(layout, to), carrier(layout, member.part())));
    }

    private void joinSet(Shaft planets, String carrier) {
        layout.everyMesh()
                .flatMap(mesh -> Stream.of(mesh.first(), mesh.second())
                        .filter(gear -> planets.along().contains(gear))
                        .map(mesh::other))
                .map(mate -> carrier(layout, mate))
                .filter(mate -> layout.find(Shaft.class, mate)
                        .filter(shaft -> shaft.carriedBy().isEmpty())
                        .isPresent())
                .forEach(mate -> join(carrier, mate));
    }

    private void join(String kept, String joined) {
        String axis = axisOf.get(kept);
        String other = axisOf.get(joined);
        axisOf.replaceAll((carrier, line) -> line.equals(other) ? axis : line);
    }
}
