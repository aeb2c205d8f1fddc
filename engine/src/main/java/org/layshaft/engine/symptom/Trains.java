package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Condition;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.State;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;

/** The trains of one layout with the same changes, each solved once. Thread-safe. */
final class Trains {
    private final TrainBuilder builder;
    private final Map<Stance, Solved> solved = new ConcurrentHashMap<>();
    private final Map<Key, Turned> turned = new ConcurrentHashMap<>();

    Trains(Layout layout, Changes changes) {
        this.builder = new TrainBuilder(layout, changes);
    }

    private record Key(Stance stance, Condition condition) {}

    /**
     * What a stance comes to.
     *
     * @param carrying bodies under load; of a shaft in two pieces, the shaft where either is
     * @param signs by gear, the signs of the torques that its meshes put on it for a torque of 1 on the input
     */
    record Solved(Train train, State state, Set<String> carrying, Map<String, Set<Integer>> signs) {}

    Solved at(Stance stance) {
        return solved.computeIfAbsent(stance, this::solve);
    }

    Turned turned(Stance stance, Condition condition) {
        return turned.computeIfAbsent(
                new Key(stance, condition), key -> new Turned(at(key.stance()).train(), key.condition()));
    }

    private Solved solve(Stance stance) {
        Train train = builder.at(stance);
        State state = TrainSolver.stateOf(train);
        return new Solved(
                train,
                state,
                carrying(state),
                state.balance().torques().map(torques -> signs(train, torques)).orElse(Map.of()));
    }

    private static Set<String> carrying(State state) {
        Set<String> carrying = new HashSet<>(state.motion().carrying());
        state.motion().carrying().forEach(body -> carrying.add(ShaftPiece.shaftOf(body)));
        return carrying;
    }

    private static Map<String, Set<Integer>> signs(Train train, Balance.Torques torques) {
        Map<String, Set<Integer>> signs = new HashMap<>();
        for (Connection connection : train.connections()) {
            if (connection instanceof Connection.Meshing meshing && torques.carries(meshing)) {
                torques.on(meshing).forEach((body, torque) -> {
                    if (meshing.mesh().joins(body) && !torque.isZero()) {
                        signs.computeIfAbsent(body, gear -> new HashSet<>()).add(torque.signum());
                    }
                });
            }
        }
        return signs;
    }
}
