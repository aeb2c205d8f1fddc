package org.layshaft.engine.train;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;

/**
 * How power runs through a train: what each connection takes from some of its bodies and gives to others. Immutable.
 *
 * @param flows every connection that passes power on, in the order of the train
 */
public record Power(List<Flow> flows) {
    public Power {
        flows = List.copyOf(flows);
    }

    /**
     * What one connection does, in units of the power that enters.
     *
     * @param taken by body id, the power that it takes from the body; all above zero
     * @param given by body id, the power that it gives to the body; all above zero, together no more than is taken
     */
    public record Flow(Connection connection, Map<String, Fraction> taken, Map<String, Fraction> given) {
        public Flow {
            taken = Map.copyOf(taken);
            given = Map.copyOf(given);
        }

        /** All that it takes. */
        public Fraction power() {
            return taken.values().stream().reduce(Fraction.ZERO, Fraction::plus);
        }

        /** What becomes heat in it. */
        public Fraction lost() {
            return power().minus(given.values().stream().reduce(Fraction.ZERO, Fraction::plus));
        }
    }

    /** How it runs from the input to the output of a train that drives. Empty where it does not drive. */
    public static Optional<Power> of(Train train) {
        State state = TrainSolver.stateOf(train);
        return state.balance().torques().map(torques -> {
            Map<Connection, Map<String, Fraction>> onBodies = new LinkedHashMap<>();
            train.connections().forEach(connection -> onBodies.put(connection, torques.on(connection)));
            return of(onBodies, state.motion().speeds());
        });
    }

    /**
     * @param torques that each connection puts on its bodies
     * @param speeds by body id; one that is absent carries nothing
     */
    static Power of(Map<Connection, Map<String, Fraction>> torques, Map<String, Fraction> speeds) {
        return new Power(torques.entrySet().stream()
                .map(each -> flow(each.getKey(), each.getValue(), speeds))
                .filter(Objects::nonNull)
                .toList());
    }

    /** The same the other way: what gave, takes. Without losses that is how it runs on the overrun. */
    public Power reversed() {
        return new Power(flows.stream()
                .map(flow -> new Flow(flow.connection(), flow.given(), flow.taken()))
                .toList());
    }

    /** The flow through one connection; empty where none goes through. */
    public Optional<Flow> through(String connection) {
        return flows.stream()
                .filter(flow -> flow.connection().id().equals(connection))
                .findFirst();
    }

    /**
     * The connections through which power goes round in circles: what some of them give comes back to them. Empty where
     * none does. How much goes round is a matter of speeds seen from the case.
     */
    public List<Flow> recirculating() {
        return flows.stream().filter(this::comesBack).toList();
    }

    private boolean comesBack(Flow start) {
        Set<String> reached = new HashSet<>(start.given().keySet());
        Deque<String> next = new ArrayDeque<>(reached);
        while (!next.isEmpty()) {
            String body = next.remove();
            if (start.taken().containsKey(body)) {
                return true;
            }
            flows.stream()
                    .filter(flow -> flow.taken().containsKey(body))
                    .flatMap(flow -> flow.given().keySet().stream())
                    .filter(reached::add)
                    .forEach(next::add);
        }
        return false;
    }

    private static Flow flow(Connection connection, Map<String, Fraction> torques, Map<String, Fraction> speeds) {
        Map<String, Fraction> taken = new LinkedHashMap<>();
        Map<String, Fraction> given = new LinkedHashMap<>();
        torques.forEach((body, torque) -> {
            Fraction power = torque.times(speeds.getOrDefault(body, Fraction.ZERO));
            if (power.signum() < 0) {
                taken.put(body, power.negated());
            } else if (power.signum() > 0) {
                given.put(body, power);
            }
        });
        return taken.isEmpty() && given.isEmpty() ? null : new Flow(connection, taken, given);
    }
}
