package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** Turns the facts of a layout, less what faults take away, into bodies and connections. */
public final class TrainBuilder {
    private final Layout layout;
    private final Changes changes;
    private final Bodies bodies;
    private final Train neutral;

    public TrainBuilder(Layout layout, Changes changes) {
        this.layout = layout;
        this.changes = changes;
        this.bodies = new Bodies(layout, changes.cuts());
        List<String> outputs = bodies.outputs();
        this.neutral =
                Train.of(bodies.all(), permanent(), bodies.input(), outputs.size() > 1 ? Train.ROAD : outputs.get(0));
    }

    /** The train with sleeves and sliding gears standing so. */
    public Train at(Stance stance) {
        List<Connection> engaged = new ArrayList<>();
        stance.engaged().forEach((member, side) -> engaged.addAll(engagedBy(layout.member(member), side)));
        return neutral.with(engaged);
    }

    public String input() {
        return bodies.input();
    }

    /** Wheels, and the rear ends of shafts, by which the drive still leaves toward the road. */
    public List<String> outputs() {
        return bodies.outputs().stream()
                .filter(output -> !changes.parted().contains(ShaftPiece.shaftOf(output)))
                .toList();
    }

    /** What is tied wherever the sleeves stand. */
    public List<Connection> permanent() {
        List<Connection> connections = new ArrayList<>();
        layout.meshes().stream().filter(this::carries).map(this::meshing).forEach(connections::add);
        layout.all(Gear.class).flatMap(this::seat).forEach(connections::add);
        layout.all(Sleeve.class).flatMap(this::hub).forEach(connections::add);
        layout.all(Gear.class)
                .filter(gear -> changes.seizedGears().contains(gear.id()))
                .map(this::seized)
                .forEach(connections::add);
        stuckFast().forEach(connections::add);
        layout.all(DogRing.class).map(this::dogRing).forEach(connections::add);
        layout.all(Joint.class)
                .filter(joint -> !changes.parted().contains(joint.id()))
                .map(this::jointed)
                .forEach(connections::add);
        layout.all(Differential.class).forEach(differential -> connections.addAll(differential(differential)));
        rolling().forEach(connections::add);
        return connections;
    }

    /** What a member ties when it stands to a side; nothing where that side engages nothing. */
    public List<Connection> engagedBy(ShiftMember member, Side side) {
        return member.at(side)
                .map(engagement -> engaged(member, side, engagement))
                .orElse(List.of());
    }

    private List<Connection> engaged(ShiftMember member, Side side, Engagement engagement) {
        if (engagement instanceof Engagement.Couples couples) {
            return List.of(new Connection.Coupled(member.part(), side, couples.to(), couples.clutchingTeeth()));
        }
        if (engagement instanceof Engagement.Closes closes) {
            if (changes.parted().contains(member.part())) {
                return List.of();
            }
            Clutch clutch = layout.the(Clutch.class, member.part());
            return List.of(new Connection.Closed(
                    clutch.id(),
                    bodies.under(layout.shaft(clutch.drivenBy().orElseThrow()), clutch.id()),
                    bodies.before(closes.shaft())));
        }
        return ((Engagement.Meshes) engagement)
                .meshes().stream().filter(this::carries).map(this::meshing).toList();
    }

    private boolean carries(Mesh mesh) {
        return !changes.strippedGears().contains(mesh.first())
                && !changes.strippedGears().contains(mesh.second());
    }

    private Connection meshing(Mesh mesh) {
        Optional<Shaft> planet = Stream.of(mesh.first(), mesh.second())
                .flatMap(gear -> carried(gear).stream())
                .findFirst();
        return new Connection.Meshing(
                mesh,
                layout.gear(mesh.first()).teeth(),
                layout.gear(mesh.second()).teeth(),
                planet.map(shaft -> bodies.before(shaft.carriedBy().orElseThrow())),
                planet.filter(shaft -> mesh.kind().isBevel())
                        .map(shaft -> shaft.along().contains(mesh.first()) ? mesh.first() : mesh.second()));
    }

    /** The shaft of this gear, where something carries it round. */
    private Optional<Shaft> carried(String gear) {
        return layout.find(Shaft.class, layout.gear(gear).carrier())
                .filter(shaft -> shaft.carriedBy().isPresent());
    }

    private Connection jointed(Joint joint) {
        return new Connection.Jointed(joint.id(), bodies.behind(joint.from()), bodies.before(joint.to()));
    }

    private Connection dogRing(DogRing dogs) {
        Shaft shaft = layout.shaft(dogs.shaft());
        return shaft.held()
                ? new Connection.Held(dogs.id(), shaft.id())
                : new Connection.Seated(dogs.id(), bodies.under(shaft, dogs.id()), dogs.id());
    }

    /** Straight ahead, all that the drive leaves by rolls along one road. */
    private Stream<Connection> rolling() {
        return bodies.outputs().size() > 1 ? outputs().stream().map(Connection.Rolling::new) : Stream.of();
    }

    private Stream<Connection> seat(Gear gear) {
        if (gear.isFree() || changes.looseSeats().contains(gear.id())) {
            return Stream.of();
        }
        return layout.find(Shaft.class, gear.carrier())
                .map(shaft -> onShaft(gear, shaft))
                .orElseGet(() -> Stream.of(new Connection.Seated(gear.id(), gear.carrier(), gear.id())));
    }

    /** On a held shaft a fixed gear stands, as a ring in the case does; one that slides there turns. */
    private Stream<Connection> onShaft(Gear gear, Shaft shaft) {
        if (!shaft.held()) {
            return Stream.of(new Connection.Seated(gear.id(), bodies.under(shaft, gear.id()), gear.id()));
        }
        return gear.seat() == Seat.FIXED ? Stream.of(new Connection.Held(gear.id(), shaft.id())) : Stream.of();
    }

    private Connection seized(Gear gear) {
        Shaft shaft = layout.shaft(gear.carrier());
        return shaft.held()
                ? new Connection.Held(gear.id(), shaft.id())
                : new Connection.Seized(gear.id(), bodies.under(shaft, gear.id()));
    }

    /** What is held by several bearings is held by the first of them. */
    private Collection<Connection> stuckFast() {
        Map<String, Connection> byId = new LinkedHashMap<>();
        layout.all(Bearing.class)
                .filter(bearing -> changes.fastBearings().contains(bearing.id()))
                .flatMap(this::stuckFast)
                .forEach(connection -> byId.putIfAbsent(connection.id(), connection));
        return byId.values();
    }

    /** In the case a shaft is held so; a free gear is seized to its shaft, and two shafts turn as one. */
    private Stream<Connection> stuckFast(Bearing bearing) {
        Optional<Gear> gear = layout.find(Gear.class, bearing.outer());
        if (gear.isPresent()) {
            return changes.seizedGears().contains(gear.get().id()) ? Stream.of() : Stream.of(seized(gear.get()));
        }
        Shaft inner = layout.shaft(bearing.inner());
        if (inner.held()) {
            return Stream.of();
        }
        String body = bodies.under(inner, bearing.id());
        boolean inCase = bearing.outer().equals(Bearing.CASE)
                || layout.find(Shaft.class, bearing.outer()).filter(Shaft::held).isPresent();
        return Stream.of(
                inCase
                        ? new Connection.Held(body, bearing.id())
                        : new Connection.Seated(body, bodies.behind(bearing.outer()), bearing.id()));
    }

    private Stream<Connection> hub(Sleeve sleeve) {
        if (changes.looseSeats().contains(sleeve.hub())) {
            return Stream.of();
        }
        Shaft shaft = layout.shaft(sleeve.shaft());
        return Stream.of(new Connection.Seated(sleeve.id(), bodies.under(shaft, sleeve.id()), sleeve.hub()));
    }

    private List<Connection> differential(Differential differential) {
        List<Connection> connections = new ArrayList<>();
        differential
                .shaft()
                .map(shaft -> new Connection.Seated(differential.id(), bodies.behind(shaft), differential.id()))
                .ifPresent(connections::add);
        String left = bodies.before(differential.sides().get(0));
        String right = bodies.before(differential.sides().get(1));
        if (!changes.parted().contains(differential.id())) {
            connections.add(new Connection.Split(differential.id(), left, right));
        }
        if (changes.fastBearings().contains(differential.id())) {
            connections.add(new Connection.Tied(differential.id(), left, right));
        }
        differential.sides().stream()
                .flatMap(side -> layout.find(HalfShaft.class, side).stream())
                .filter(halfShaft -> !changes.parted().contains(halfShaft.id()))
                .map(halfShaft -> new Connection.Joined(halfShaft.id(), halfShaft.wheel()))
                .forEach(connections::add);
        return connections;
    }
}
