package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;

/** Asserts that all roads to the motion and the torques of a train come to the same. */
final class Roads {
    private final Train train;
    private final String where;
    private final Motion motion;

    Roads(Train train, String where) {
        this.train = train;
        this.where = where;
        this.motion = TrainSolver.solve(train);
    }

    void assertAllAgree() {
        assertGraphAgrees();
        assertFloatingAgrees();
        assertCertified();
    }

    /** Exact solver against ratios along paths in a graph: all exact. */
    void assertGraphAgrees() {
        GraphRoad graph = new GraphRoad(train);
        assertEquals(graph.outcome(), motion.outcome(), where);
        assertEquals(graph.speeds(), motion.speeds(), where);
    }

    /** Exact solver against singular values, speeds and forces to one part in a thousand million. */
    void assertFloatingAgrees() {
        FloatingRoad floating = new FloatingRoad(train);
        assertEquals(floating.outcome(), motion.outcome(), where);
        assertClose(floating.speeds(), motion.speeds());
        if (motion.outcome() == Motion.Outcome.DRIVES) {
            Balance.Torques torques = Statics.of(train).torques().orElseThrow(() -> new AssertionError(where));
            assertClose(floating.forces(torques.output().toDouble()), torques.forces());
        }
    }

    /** The certificate of the outcome holds, torques balance on every body, and power in is power out. */
    void assertCertified() {
        Certificate certificate = Certifier.certify(train);
        assertEquals(motion.outcome(), certificate.outcome(), where);
        assertTrue(CertificateChecker.holds(certificate, train), where);
        Balance balance = Statics.of(train);
        assertEquals(
                motion.outcome() == Motion.Outcome.DRIVES, balance.torques().isPresent(), where);
        balance.torques().ifPresent(this::assertBalanced);
    }

    private void assertBalanced(Balance.Torques torques) {
        Map<String, Fraction> sums = new HashMap<>(Map.of(train.input(), Fraction.ONE));
        Set<String> underForce = new HashSet<>();
        for (Connection connection : train.connections()) {
            torques.on(connection).forEach((body, torque) -> sums.merge(body, torque, Fraction::plus));
            if (torques.carries(connection)) {
                underForce.addAll(connection.equation().coefficients().keySet());
            }
        }
        sums.values().removeIf(Fraction::isZero);
        assertEquals(Map.of(train.output(), torques.output()), sums, where);
        assertEquals(underForce, motion.carrying(), where);
        assertEquals(Fraction.ONE, torques.output().times(motion.speeds().get(train.output())), where);
        assertEquals(motion.ratio().orElseThrow(), torques.output(), where);
        assertEquals(train.input(), motion.carrying().iterator().next(), where);
    }

    private void assertClose(Map<String, Double> floating, Map<String, Fraction> exact) {
        assertEquals(Set.copyOf(floating.keySet()), Set.copyOf(exact.keySet()), where);
        exact.forEach((what, value) -> assertEquals(
                value.toDouble(),
                floating.get(what),
                FloatingRoad.TOLERANCE * Math.max(1, Math.abs(value.toDouble())),
                () -> where + " " + what));
    }
}
