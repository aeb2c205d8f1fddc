package org.layshaft.engine.train;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/**
 * Multipliers that, put on the equations of a train, add up to a given sum of speeds. They prove that this sum is zero
 * in every motion; read as forces, they balance torques of the given sizes on the bodies.
 *
 * @param multipliers by connection id, zeros included
 * @param unique whether no other multipliers do
 */
record Combination(Map<String, Fraction> multipliers, boolean unique) {

    /**
     * The multipliers with the least sum of squares; empty where there are none.
     *
     * @param sum coefficients by body id; a body that is absent counts as zero
     */
    static Optional<Combination> addingUpTo(Map<String, Fraction> sum, Train train) {
        List<Connection> connections = train.connections();
        LinearSystem system = new LinearSystem(connections.size());
        Map<String, LinearForm> totals = totals(train);
        // bodies with few connections first: each then settles one multiplier, and hardly any form grows
        totals.keySet().stream()
                .sorted(Comparator.comparing(body -> totals.get(body).unknowns().length))
                .forEach(body -> system.require(totals.get(body)
                        .plus(
                                LinearForm.of(system.one(), Fraction.ONE),
                                sum.getOrDefault(body, Fraction.ZERO).negated())));
        if (!system.isSolvable()) {
            return Optional.empty();
        }
        boolean unique = system.free().isEmpty();
        system.settleAtLeastSquares();
        Map<String, Fraction> multipliers = new LinkedHashMap<>();
        for (int number = 0; number < connections.size(); number++) {
            multipliers.put(connections.get(number).id(), system.valueOf(number).coefficientOf(system.one()));
        }
        return Optional.of(new Combination(multipliers, unique));
    }

    /** What the multipliers, numbered like the connections, put on each body. */
    static Map<String, LinearForm> totals(Train train) {
        Map<String, LinearForm> totals = new LinkedHashMap<>();
        train.bodies().forEach(body -> totals.put(body, LinearForm.ZERO));
        List<Connection> connections = train.connections();
        for (int number = 0; number < connections.size(); number++) {
            LinearForm multiplier = LinearForm.of(number, Fraction.ONE);
            connections
                    .get(number)
                    .equation()
                    .coefficients()
                    .forEach((body, coefficient) ->
                            totals.merge(body, multiplier.times(Fraction.of(coefficient)), LinearForm::plus));
        }
        return totals;
    }
}
