package org.layshaft.engine.train;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/** What becomes of a torque of 1 on the input of a train, without losses. */
public sealed interface Balance {

    /** The torques; empty where none reach the output. */
    default Optional<Torques> torques() {
        return Optional.empty();
    }

    /**
     * It reaches the output.
     *
     * @param forces by connection id, the multiplier of its equation: torque for each tooth of a mesh, plain torque for
     *     whatever ties at equal speed; zero where nothing is carried
     * @param output the torque that the output gives to its load
     * @param shareIsAssumed whether paths lie in parallel, so that equal speeds alone do not say how they share. Then the
     *     wheels on one road bear as equal parts as they can, and the forces are those with the least sum of squares:
     *     branches that are alike carry alike, and nothing is carried round in circles. How unlike branches share depends
     *     on their stiffness, and wheels on their grip, which a layout does not tell
     */
    record Torques(Map<String, Fraction> forces, Fraction output, boolean shareIsAssumed) implements Balance {
        public Torques {
            forces = Collections.unmodifiableMap(new LinkedHashMap<>(forces));
        }

        @Override
        public Optional<Torques> torques() {
            return Optional.of(this);
        }

        /** Torque that the connection puts on each body it ties, by body id. */
        public Map<String, Fraction> on(Connection connection) {
            Map<String, Fraction> torques = new LinkedHashMap<>();
            connection
                    .equation()
                    .coefficients()
                    .forEach((body, coefficient) ->
                            torques.put(body, forces.get(connection.id()).times(Fraction.of(coefficient))));
            return torques;
        }

        /**
         * Torque that the case takes from the connection, through the bearings of its gears or where it holds a body;
         * together with what comes in and what goes out these add up to zero. Empty for a bevel pair whose shafts lie
         * across each other: there the case takes the torque of each gear about an axis of its own.
         */
        public Optional<Fraction> onCase(Connection connection) {
            if (connection instanceof Connection.Meshing meshing
                    && meshing.mesh().kind().isBevel()) {
                return meshing.carrier().map(carrier -> Fraction.ZERO);
            }
            return Optional.of(on(connection).values().stream()
                    .reduce(Fraction.ZERO, Fraction::plus)
                    .negated());
        }

        public boolean carries(Connection connection) {
            return !forces.get(connection.id()).isZero();
        }
    }

    /**
     * There is nothing to push against.
     *
     * @param motion speeds by body id that every connection allows: the input turns once and the load does not move
     */
    record Slips(Map<String, Fraction> motion) implements Balance {
        public Slips {
            motion = Collections.unmodifiableMap(new LinkedHashMap<>(motion));
        }
    }

    /** The input cannot turn: whatever torque stands on it stays in the box. */
    record Held() implements Balance {}
}
