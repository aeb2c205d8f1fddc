package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/**
 * Torques with losses. A mesh gives its driven gear only part of the force that its driving gear bears; which one drives
 * depends on the torques, and is settled by going round until they agree. Between a planet and what it meshes with, the
 * motion relative to the carrier decides. Not thread-safe.
 */
final class LossySolver {
    private static final int MOST_ROUNDS = 20;

    private final Train train;
    private final Efficiencies efficiencies;
    private final Losses.Flow flow;
    private final Speeds speeds;
    private final Map<String, Fraction> motion;

    LossySolver(Train train, Efficiencies efficiencies, Losses.Flow flow) {
        this.train = train;
        this.efficiencies = efficiencies;
        this.flow = flow;
        this.speeds = Speeds.perTurnOfInput(train);
        this.motion = speeds.fixed();
    }

    Losses solve() {
        if (TrainSolver.outcome(train, speeds) != Outcome.DRIVES) {
            return new Losses.NoDrive();
        }
        Map<String, Fraction> forces = withoutLosses();
        List<String> unknown = unknownUnder(forces);
        if (!unknown.isEmpty()) {
            return new Losses.Unknown(unknown);
        }
        Set<Map<String, String>> tried = new HashSet<>();
        Map<String, String> driven = drivenBy(forces);
        boolean jams = false;
        for (int round = 0; round < MOST_ROUNDS && tried.add(driven); round++) {
            List<Row> rows = rows(driven);
            Optional<Forces> solved = Forces.withLoadOn(train.number(train.output()), input(), rows, speeds.forest());
            if (solved.isEmpty()) {
                return new Losses.SelfLocking();
            }
            forces = solved.get().byConnection();
            Map<String, String> then = drivenBy(forces);
            if (then.equals(driven)) {
                return jams(solved.get()) ? new Losses.SelfLocking() : passed(solved.get(), rows);
            }
            jams |= jams(solved.get());
            driven = then;
        }
        return jams ? new Losses.SelfLocking() : new Losses.Undecided();
    }

    private Map<Integer, Fraction> input() {
        Fraction torque = flow == Losses.Flow.DRIVE ? Fraction.ONE : Fraction.ONE.negated();
        return Map.of(train.number(train.input()), torque.negated());
    }

    private Map<String, Fraction> withoutLosses() {
        Map<String, Fraction> forces = new LinkedHashMap<>();
        Statics.driving(train, speeds)
                .byConnection()
                .forEach((id, force) -> forces.put(id, flow == Losses.Flow.DRIVE ? force : force.negated()));
        return forces;
    }

    private List<String> unknownUnder(Map<String, Fraction> forces) {
        return meshes().stream()
                .filter(mesh -> !forces.get(mesh.id()).isZero())
                .filter(mesh -> efficiencies.of(mesh).isEmpty())
                .map(Connection::id)
                .toList();
    }

    /** Whether the load, too, would have to bring power in, or to take it out. */
    private boolean jams(Forces forces) {
        int leaving = forces.load().times(motion.get(train.output())).signum();
        return flow == Losses.Flow.DRIVE ? leaving <= 0 : leaving >= 0;
    }

    private Losses passed(Forces forces, List<Row> rows) {
        Fraction output = forces.load();
        Fraction turns = motion.get(train.output());
        Fraction leaving = flow == Losses.Flow.DRIVE ? output.times(turns) : Fraction.ONE;
        Fraction entering =
                flow == Losses.Flow.DRIVE ? Fraction.ONE : output.times(turns).negated();
        if (leaving.signum() <= 0 || entering.signum() <= 0) {
            return new Losses.SelfLocking();
        }
        Map<Connection, Map<String, Fraction>> torques = new LinkedHashMap<>();
        Map<String, Map<String, Fraction>> byId = new LinkedHashMap<>();
        Fraction[] byRow = forces.byRow();
        for (int number = 0; number < rows.size(); number++) {
            Row row = rows.get(number);
            Map<String, Fraction> onBodies = new LinkedHashMap<>();
            for (int place = 0; place < row.bodies().length; place++) {
                onBodies.put(
                        train.bodies().get(row.bodies()[place]), row.push(place).times(byRow[number]));
            }
            torques.put(row.connection(), onBodies);
            byId.put(row.id(), onBodies);
        }
        return new Losses.Passed(output, byId, Power.of(torques, motion), leaving.over(entering), !forces.areUnique());
    }

    /** By mesh under load, the gear that is driven in it; a mesh whose gears do not roll on each other loses nothing. */
    private Map<String, String> drivenBy(Map<String, Fraction> forces) {
        Map<String, String> driven = new LinkedHashMap<>();
        for (Connection.Meshing mesh : meshes()) {
            Fraction ofCarrier = mesh.carrier()
                    .map(this::speed)
                    .filter(speed -> !mesh.crosses(mesh.mesh().first()))
                    .orElse(Fraction.ZERO);
            Fraction rolling = speed(mesh.mesh().first()).minus(ofCarrier);
            int power = rolling.signum() * forces.get(mesh.id()).signum();
            if (power != 0) {
                driven.put(
                        mesh.id(), power > 0 ? mesh.mesh().first() : mesh.mesh().second());
            }
        }
        return driven;
    }

    private List<Row> rows(Map<String, String> driven) {
        List<Row> rows = new ArrayList<>();
        for (Row row : train.rows()) {
            String gear = driven.get(row.id());
            rows.add(gear == null ? row : lossy(row, gear));
        }
        return rows;
    }

    private Row lossy(Row row, String driven) {
        Connection.Meshing mesh = (Connection.Meshing) row.connection();
        Map<String, Fraction> pushes = mesh.pushes(driven, efficiencies.of(mesh).orElse(Fraction.ONE));
        Fraction[] byPlace = new Fraction[row.bodies().length];
        for (int place = 0; place < byPlace.length; place++) {
            byPlace[place] = pushes.get(train.bodies().get(row.bodies()[place]));
        }
        return row.pushing(byPlace);
    }

    private List<Connection.Meshing> meshes() {
        return train.connections().stream()
                .filter(Connection.Meshing.class::isInstance)
                .map(Connection.Meshing.class::cast)
                .toList();
    }

    /** A body whose speed is not fixed carries nothing, so that it does not matter how it turns. */
    private Fraction speed(String body) {
        return motion.getOrDefault(body, Fraction.ZERO);
    }
}
