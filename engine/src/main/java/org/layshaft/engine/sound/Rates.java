package org.layshaft.engine.sound;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.State;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/**
 * How everything turns in a sound box, for one turn of the input, and what the power goes through.
 *
 * @param torques empty where nothing is driven
 */
record Rates(
        Layout layout,
        Train train,
        Map<String, Fraction> speeds,
        Set<String> carrying,
        Optional<Balance.Torques> torques) {

    /** In a stance that drives. */
    static Rates driving(Layout layout, Stance stance) {
        Train train = new TrainBuilder(layout, Changes.NONE).at(stance);
        State state = TrainSolver.stateOf(train);
        return new Rates(
                layout,
                train,
                state.motion().speeds(),
                state.motion().carrying(),
                state.balance().torques());
    }

    /**
     * In neutral.
     *
     * @param output turns of the output for one of the input
     * @return empty where the two cannot turn so, because there is no neutral
     */
    static Optional<Rates> idle(Layout layout, Fraction output) {
        Train train = new TrainBuilder(layout, Changes.NONE).at(Stance.NEUTRAL);
        return TrainSolver.speedsGiven(train, Map.of(train.input(), Fraction.ONE, train.output(), output))
                .map(speeds -> new Rates(layout, train, speeds, Set.of(), Optional.empty()));
    }

    /** Turns of a body, of {@link Bearing#CASE} or of a held shaft; empty where nothing fixes them. */
    Optional<Fraction> of(String body) {
        boolean stands = body.equals(Bearing.CASE)
                || layout.find(Shaft.class, body).filter(Shaft::held).isPresent();
        return stands ? Optional.of(Fraction.ZERO) : Optional.ofNullable(speeds.get(body));
    }

    /**
     * Turns of a body as what goes round with it sees them: those of a planet, or of its spindle, against its carrier.
     */
    Optional<Fraction> inItsPlace(String body) {
        return carrierOf(body)
                .map(carrier -> of(body).flatMap(mine -> of(carrier).map(mine::minus)))
                .orElseGet(() -> of(body));
    }

    /** The body that carries this one round, unless its axis lies across: then its turns are its own already. */
    Optional<String> carrierOf(String body) {
        return spindleOf(body).flatMap(Shaft::carriedBy).filter(carrier -> !liesAcross(body));
    }

    /** The shaft that this is, or that it sits on, where something carries it round. */
    Optional<Shaft> spindleOf(String body) {
        return layout.find(Shaft.class, body)
                .or(() -> layout.find(Gear.class, body).flatMap(gear -> layout.find(Shaft.class, gear.carrier())))
                .filter(shaft -> shaft.carriedBy().isPresent());
    }

    /** Turns of a gear as its teeth count them in a mesh: against the carrier, where there is one. */
    Optional<Fraction> inItsFrame(String gear, Connection.Meshing meshing) {
        return frameOf(gear, meshing)
                .map(carrier -> of(gear).flatMap(mine -> of(carrier).map(mine::minus)))
                .orElseGet(() -> of(gear));
    }

    /** The carrier that the turns of this gear are counted against in a mesh, if any. */
    Optional<String> frameOf(String gear, Connection.Meshing meshing) {
        return meshing.carrier()
                .filter(carrier -> meshing.crossing().filter(gear::equals).isEmpty());
    }

    /** How many alike there are of a body. */
    int alike(String body) {
        return spindleOf(body).map(Shaft::count).orElse(1);
    }

    /** Meshes that are made, in the order of the train. */
    List<Connection.Meshing> meshes() {
        return connections(Connection.Meshing.class).toList();
    }

    <C extends Connection> Stream<C> connections(Class<C> type) {
        return train.connections().stream().filter(type::isInstance).map(type::cast);
    }

    boolean carries(Connection connection) {
        return torques.filter(each -> each.carries(connection)).isPresent();
    }

    /** Whether power goes through a body; for a spindle that is carried round, through its carrier. */
    boolean bears(String body) {
        return carrying.contains(body)
                || layout.find(Shaft.class, body)
                        .flatMap(Shaft::carriedBy)
                        .filter(carrying::contains)
                        .isPresent();
    }

    private boolean liesAcross(String body) {
        return meshes().stream()
                .anyMatch(mesh -> mesh.crossing()
                        .filter(gear ->
                                gear.equals(body) || layout.gear(gear).carrier().equals(body))
                        .isPresent());
    }
}
