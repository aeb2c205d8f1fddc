package org.layshaft.engine.train;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/** Checks certificates by putting their numbers into the equations; solves nothing. Immutable. */
public final class CertificateChecker {
    private final Train train;
    private final Certificate certificate;

    private CertificateChecker(Train train, Certificate certificate) {
        this.train = train;
        this.certificate = certificate;
    }

    /** Whether the certificate proves its outcome for this train. */
    public static boolean holds(Certificate certificate, Train train) {
        CertificateChecker checker = new CertificateChecker(train, certificate);
        return certificate.motions().stream().allMatch(motion -> allows(train.connections(), motion))
                && certificate.proofs().stream().allMatch(checker::addsUp)
                && checker.isProven();
    }

    /** Whether the set locks this train by itself, and each of its connections is needed for that. */
    public static boolean holds(LockingSet set, Train train) {
        return set.certificate().outcome() == Outcome.LOCKED
                && holds(set.certificate(), train.tiedOnlyBy(set.connections()))
                && set.connections().stream().allMatch(spared -> isFreedWithout(spared, set, train));
    }

    private static boolean isFreedWithout(Connection spared, LockingSet set, Train train) {
        Map<String, Fraction> motion = set.freedWithout().getOrDefault(spared.id(), Map.of());
        List<Connection> others =
                set.connections().stream().filter(each -> each != spared).toList();
        return allows(others, motion)
                && Stream.of(train.input(), train.output())
                        .anyMatch(body -> !speed(body, motion).isZero());
    }

    private static boolean allows(List<Connection> connections, Map<String, Fraction> motion) {
        return connections.stream()
                .allMatch(connection -> connection.equation().coefficients().entrySet().stream()
                        .map(term -> speed(term.getKey(), motion).times(Fraction.of(term.getValue())))
                        .reduce(Fraction.ZERO, Fraction::plus)
                        .isZero());
    }

    private boolean addsUp(Certificate.Proof proof) {
        Map<String, Fraction> sum = new HashMap<>();
        for (Connection connection : train.connections()) {
            Fraction multiplier = proof.multipliers().getOrDefault(connection.id(), Fraction.ZERO);
            connection
                    .equation()
                    .coefficients()
                    .forEach((body, coefficient) ->
                            sum.merge(body, multiplier.times(Fraction.of(coefficient)), Fraction::plus));
        }
        sum.values().removeIf(Fraction::isZero);
        return sum.equals(proof.sum());
    }

    private boolean isProven() {
        boolean inputTurns = turns().anyMatch(turns -> !turns.input().isZero());
        boolean outputTurns = turns().anyMatch(turns -> !turns.output().isZero());
        boolean inputStands = proves(Map.of(train.input(), Fraction.ONE));
        boolean outputStands = proves(Map.of(train.output(), Fraction.ONE));
        return switch (certificate.outcome()) {
            case DRIVES -> ratioIsProven();
            case NEUTRAL -> inputTurns && outputTurns && strays();
            case LOCKED -> inputStands && outputStands;
            case INPUT_HELD -> inputStands && outputTurns;
            case OUTPUT_HELD -> outputStands && inputTurns;
        };
    }

    /** Whether the output is proven to keep the ratio that a motion shows. */
    private boolean ratioIsProven() {
        return turns().filter(
                        turns -> !turns.input().isZero() && !turns.output().isZero())
                .map(turns -> turns.input().over(turns.output()))
                .anyMatch(ratio -> proves(Map.of(train.input(), Fraction.ONE, train.output(), ratio.negated())));
    }

    /** Whether the motions show the output at more than one ratio to the input. */
    private boolean strays() {
        return turns().anyMatch(one -> turns().anyMatch(other ->
                !one.input().times(other.output()).equals(other.input().times(one.output()))));
    }

    private boolean proves(Map<String, Fraction> sum) {
        return certificate.proofs().stream().anyMatch(proof -> proof.sum().equals(sum));
    }

    private Stream<Turns> turns() {
        return certificate.motions().stream()
                .map(motion -> new Turns(speed(train.input(), motion), speed(train.output(), motion)));
    }

    private static Fraction speed(String body, Map<String, Fraction> motion) {
        return motion.getOrDefault(body, Fraction.ZERO);
    }

    /** Turns of the input, and of the output, in one motion. */
    private record Turns(Fraction input, Fraction output) {}
}
