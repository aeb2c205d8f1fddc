package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

class CertificateTest {
    private static final Train THIRD = curlew(Stance.NEUTRAL.with("3-4-sleeve", Side.REAR));
    private static final Train TWO_GEARS =
            curlew(Stance.NEUTRAL.with("3-4-sleeve", Side.REAR).with("1-2-sleeve", Side.FRONT));

    static Stream<Train> trains() {
        return Stream.of(THIRD, TWO_GEARS, curlew(Stance.NEUTRAL));
    }

    /** A certificate proves its own outcome and none of the others. */
    @ParameterizedTest
    @EnumSource(Outcome.class)
    void provesNoOtherOutcome(Outcome claimed) {
        trains().forEach(train -> {
            Certificate certificate = Certifier.certify(train);
            Certificate forged = new Certificate(claimed, certificate.motions(), certificate.proofs());
            assertEquals(claimed == certificate.outcome(), CertificateChecker.holds(forged, train));
        });
    }

    @ParameterizedTest
    @MethodSource("trains")
    void aChangedSpeedIsFound(Train train) {
        Certificate certificate = Certifier.certify(train);
        for (Map<String, Fraction> motion : certificate.motions()) {
            Map<String, Fraction> changed = new TreeMap<>(motion);
            changed.merge("countershaft", Fraction.of(1, 1000), Fraction::plus);
            assertFalse(CertificateChecker.holds(
                    new Certificate(certificate.outcome(), List.of(changed), certificate.proofs()), train));
        }
    }

    @Test
    void aChangedMultiplierIsFound() {
        Certificate certificate = Certifier.certify(THIRD);
        Certificate.Proof proof = certificate.proofs().get(0);
        Map<String, Fraction> multipliers = new TreeMap<>(proof.multipliers());
        multipliers.merge("seat cluster-third", Fraction.ONE, Fraction::plus);
        Certificate changed = new Certificate(
                certificate.outcome(), certificate.motions(), List.of(new Certificate.Proof(proof.sum(), multipliers)));
        assertFalse(CertificateChecker.holds(changed, THIRD));
    }

    @Test
    void aCertificateOfOneTrainIsNoneForAnother() {
        Certificate certificate = Certifier.certify(THIRD);
        assertFalse(CertificateChecker.holds(certificate, TWO_GEARS));
        assertFalse(CertificateChecker.holds(certificate, curlew(Stance.NEUTRAL)));
    }

    @Test
    void theLockingSetNamesBothGearsAndNoBystander() {
        LockingSet set = LockingSet.of(TWO_GEARS).orElseThrow();
        assertEquals(
                Set.of(
                        "mesh input-gear/cluster-driven",
                        "mesh third/cluster-third",
                        "mesh second/cluster-second",
                        "couple 3-4-sleeve rear",
                        "couple 1-2-sleeve front",
                        "seat input-gear",
                        "seat cluster-driven",
                        "seat cluster-third",
                        "seat cluster-second",
                        "seat 3-4-hub",
                        "seat 1-2-hub"),
                new TreeSet<>(set.connections().stream().map(Connection::id).toList()));
        assertTrue(CertificateChecker.holds(set, TWO_GEARS));
    }

    @Test
    void aLockingSetWithABystanderIsRefused() {
        LockingSet set = LockingSet.of(TWO_GEARS).orElseThrow();
        Connection bystander = TWO_GEARS.connections().stream()
                .filter(connection -> connection.id().equals("seat cluster-first"))
                .findFirst()
                .orElseThrow();
        List<Connection> more =
                Stream.concat(set.connections().stream(), Stream.of(bystander)).toList();
        Map<String, Map<String, Fraction>> freed = new TreeMap<>(set.freedWithout());
        freed.put(bystander.id(), freed.values().iterator().next());
        assertFalse(CertificateChecker.holds(new LockingSet(more, set.certificate(), freed), TWO_GEARS));
    }

    @Test
    void nothingLocksATrainThatTurns() {
        assertEquals(Optional.empty(), LockingSet.of(THIRD));
    }

    static Stream<Layout> boxes() {
        return Boxes.all().stream();
    }

    /** Every stance that locks a sound box has a locking set that holds. */
    @ParameterizedTest
    @MethodSource("boxes")
    void everyLockedStanceHasItsLockingSet(Layout box) {
        TrainBuilder builder = new TrainBuilder(box, Changes.NONE);
        for (Stance stance : Stances.all(box)) {
            Train train = builder.at(stance);
            boolean locked = TrainSolver.solve(train).outcome() == Outcome.LOCKED;
            Optional<LockingSet> set = LockingSet.of(train);
            assertEquals(locked, set.isPresent(), stance::toString);
            set.ifPresent(found -> assertTrue(CertificateChecker.holds(found, train), stance::toString));
        }
    }

    private static Train curlew(Stance stance) {
        return new TrainBuilder(Boxes.the("curlew"), Changes.NONE).at(stance);
    }
}
