package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Drive;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Faulty;
import org.layshaft.engine.rules.fact.Mechanism;
import org.layshaft.engine.rules.fact.Ties;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** What a layout, less what faults take away, is to the rules. */
final class LayoutFacts {
    private final Layout layout;
    private final TrainBuilder train;
    private final FaultFacts faults;

    LayoutFacts(Layout layout, FaultFacts faults) {
        this.layout = layout;
        this.train = new TrainBuilder(layout, faults.changes());
        this.faults = faults;
    }

    List<Fact> all() {
        return Stream.of(mechanism(), ends(), ties(), faults.facts().stream())
                .flatMap(facts -> facts)
                .toList();
    }

    private Stream<Fact> mechanism() {
        Stream<Fact> forks = layout.all(Fork.class)
                .flatMap(fork -> layout.member(fork.member()).sides().keySet().stream()
                        .map(side -> new Mechanism.ForkMoves(fork.rail(), fork.id(), fork.member(), side)));
        return Stream.concat(forks, between());
    }

    private Stream<Fact> between() {
        return layout.all(Interlock.class)
                .filter(interlock -> !interlock.pieces().isEmpty())
                .flatMap(this::between);
    }

    private Stream<Fact> between(Interlock interlock) {
        List<String> rails = interlock.rails();
        return pairs(rails.size())
                .map(pair -> new Mechanism.Between(
                        rails.get(pair[0]), rails.get(pair[1]), piecesBetween(interlock, pair[0], pair[1])));
    }

    /** Plungers between neighbours and pins through the rails between; a plate or collar lies between them all. */
    private List<String> piecesBetween(Interlock interlock, int one, int other) {
        List<String> reach = interlock.rails().subList(one, other + 1);
        List<String> inside = interlock.rails().subList(one + 1, other);
        return interlock.pieces().stream()
                .map(id -> layout.the(InterlockPiece.class, id))
                .filter(piece -> switch (piece.form()) {
                    case PLUNGER -> reach.containsAll(piece.rails());
                    case PIN -> inside.containsAll(piece.rails());
                    case PLATE, COLLAR, DRUM -> piece.rails().containsAll(reach);
                })
                .map(InterlockPiece::id)
                .toList();
    }

    private Stream<Fact> ends() {
        Stream<Fact> outputs = train.outputs().stream().map(Drive.OutputBody::new);
        return Stream.concat(Stream.of(new Drive.InputBody(train.input())), outputs);
    }

    private Stream<Fact> ties() {
        List<Fact> facts = new ArrayList<>();
        List<Connection> permanent = train.permanent();
        permanent.forEach(connection -> always(connection).forEach(facts::add));
        new EpicyclicFacts(layout, permanent).all().forEach(facts::add);
        for (ShiftMember member : layout.members()) {
            for (Side side : member.sides().keySet()) {
                train.engagedBy(member, side).forEach(connection -> facts.add(engaged(member, side, connection)));
            }
        }
        return facts.stream();
    }

    private Stream<Fact> always(Connection connection) {
        if (connection instanceof Connection.Meshing meshing) {
            // What a planet meshes with is told with its set.
            return meshing.carrier().isPresent()
                    ? Stream.of()
                    : Stream.of(new Ties.InMesh(
                            connection.id(),
                            meshing.mesh().first(),
                            meshing.mesh().second(),
                            meshing.firstTeeth(),
                            meshing.secondTeeth(),
                            meshing.mesh().kind()));
        }
        if (connection instanceof Connection.Seated seated) {
            return Stream.of(seated(seated));
        }
        if (connection instanceof Connection.Jointed jointed) {
            return Stream.of(new Ties.FixedOn(connection.id(), jointed.to(), jointed.from()));
        }
        if (connection instanceof Connection.Seized seized) {
            return Stream.of(new Ties.SeizedOn(
                    connection.id(),
                    seized.gear(),
                    seized.shaft(),
                    faults.seizing(seized.gear()).orElseThrow()));
        }
        if (connection instanceof Connection.Held held) {
            return Stream.of(held(held));
        }
        if (connection instanceof Connection.Joined joined) {
            return Stream.of(new Ties.HalfShaftJoins(connection.id(), joined.halfShaft(), joined.wheel()));
        }
        if (connection instanceof Connection.Split split) {
            return Stream.of(new Ties.Splits(connection.id(), split.differential(), split.left(), split.right()));
        }
        if (connection instanceof Connection.Tied tied) {
            return Stream.of(new Ties.SidesTied(
                    connection.id(),
                    tied.differential(),
                    tied.left(),
                    tied.right(),
                    faults.seizing(tied.differential()).orElseThrow()));
        }
        if (connection instanceof Connection.Rolling rolling) {
            return Stream.of(new Ties.OnOneRoad(connection.id(), rolling.output()));
        }
        throw new IllegalArgumentException("No rule reads the connection '%s'.".formatted(connection.id()));
    }

    private Fact held(Connection.Held held) {
        Optional<Faulty.Present> byBearing = faults.seizing(held.spindle());
        Optional<Faulty.Present> byGear = faults.seizing(held.body());
        if (byBearing.isPresent()) {
            return new Ties.HeldFast(held.id(), held.body(), held.spindle(), byBearing.get());
        }
        return byGear.isPresent()
                ? new Ties.HeldOn(held.id(), held.body(), held.spindle(), byGear.get())
                : new Ties.InTheCase(held.id(), held.body());
    }

    private Fact seated(Connection.Seated seated) {
        Optional<Faulty.Present> byBearing =
                layout.find(Bearing.class, seated.seat()).flatMap(bearing -> faults.seizing(bearing.id()));
        return byBearing.isPresent()
                ? new Ties.StuckTogether(seated.id(), seated.body(), seated.carrier(), seated.seat(), byBearing.get())
                : new Ties.FixedOn(seated.id(), seated.body(), seated.carrier());
    }

    private Fact engaged(ShiftMember member, Side side, Connection connection) {
        if (connection instanceof Connection.Meshing meshing) {
            return new Ties.MeshedBySliding(
                    connection.id(),
                    member.part(),
                    side,
                    meshing.mesh().first(),
                    meshing.mesh().second(),
                    meshing.firstTeeth(),
                    meshing.secondTeeth());
        }
        if (connection instanceof Connection.Closed closed) {
            return new Ties.ClutchJoins(connection.id(), closed.clutch(), closed.driving(), closed.driven());
        }
        Connection.Coupled coupled = (Connection.Coupled) connection;
        return new Ties.CouplesTo(connection.id(), coupled.sleeve(), side, coupled.to());
    }

    /** Every pair of places in a list of this size, the earlier first. */
    static Stream<int[]> pairs(int size) {
        return IntStream.range(0, size)
                .boxed()
                .flatMap(one -> IntStream.range(one + 1, size).mapToObj(other -> new int[] {one, other}));
    }
}
