package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearSystem;

/**
 * Torques, as the dual of speeds. Each connection bears one force λ and puts on each body that it ties the torque
 * coefficient times λ; with the torques τ from outside, every body is in balance: Aᵀλ = −τ. Exact and without losses.
 * Stateless.
 */
public final class Statics {
    private Statics() {}

    /**
     * What a torque of 1 on the input comes to, the load lying on all outputs in equal shares. Does not ask that the
     * outputs turn alike: in a bend, without {@link Connection.StraightAhead}, the shares stay equal.
     */
    public static Balance of(Train train) {
        Speeds speeds = Speeds.perTurnOfInput(train);
        if (!speeds.arePossible()) {
            return new Balance.Held();
        }
        return speeds.asGivenWhileStand(train.outputs())
                .<Balance>map(Balance.Slips::new)
                .orElseGet(() -> driving(train, speeds.asGiven()));
    }

    /** Connections that carry nothing, whatever torques stand on the input and on each output. */
    public static Set<String> carryingNothing(Train train) {
        LinearSystem system = new LinearSystem(train.connections().size());
        Combination.totals(train).forEach((body, total) -> {
            if (!body.equals(train.input()) && !train.outputs().contains(body)) {
                system.require(total);
            }
        });
        Set<String> idle = new LinkedHashSet<>();
        for (int number = 0; number < train.connections().size(); number++) {
            if (system.valueOf(number).isZero()) {
                idle.add(train.connections().get(number).id());
            }
        }
        return idle;
    }

    /** The torques of a train whose input turns once while its outputs, together, turn as in this motion. */
    static Balance.Torques driving(Train train, Map<String, Fraction> motion) {
        Fraction turns = train.outputs().stream().map(motion::get).reduce(Fraction.ZERO, Fraction::plus);
        Map<String, Fraction> loads = new LinkedHashMap<>();
        train.outputs().forEach(output -> loads.put(output, turns.inverse()));
        Map<String, Fraction> fromConnections = new LinkedHashMap<>(loads);
        fromConnections.merge(train.input(), Fraction.ONE.negated(), Fraction::plus);
        Combination combination = Combination.addingUpTo(fromConnections, train).orElseThrow();
        return new Balance.Torques(combination.multipliers(), loads, !combination.unique());
    }
}
