package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion.Outcome;

/** Ten thousand trains drawn at random, sound and faulted: outcome, speeds and torques by every road that there is. */
class DrawnTrainsTest {
    private static final int TRAINS = Integer.getInteger("layshaft.trains", 10_000);

    /** One in three without a fault, one with a single fault, one with two at once. */
    @Test
    void everyRoadComesToTheSame() {
        for (int seed = 0; seed < TRAINS; seed++) {
            int faults = seed % 3;
            Train train = DrawnTrain.faulted(DrawnTrain.of(seed), faults, new SplittableRandom(seed));
            Roads roads = new Roads(train, "seed " + seed + ", " + faults + " faults");
            roads.assertFloatingAgrees();
            roads.assertCertified();
        }
    }

    /** The trains are no easy ones: every outcome is common among them, and so are loads that paths share. */
    @Test
    void theDrawingIsMixed() {
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        IntStream.range(0, 1000)
                .mapToObj(seed -> DrawnTrain.faulted(DrawnTrain.of(seed), 1, new SplittableRandom(seed)))
                .forEach(train -> outcomes.merge(TrainSolver.solve(train).outcome(), 1, Integer::sum));
        Arrays.stream(Outcome.values())
                .forEach(outcome -> assertTrue(outcomes.getOrDefault(outcome, 0) >= 5, outcomes::toString));
        long shared = IntStream.range(0, 1000)
                .mapToObj(seed -> TrainSolver.stateOf(DrawnTrain.of(seed)).balance())
                .flatMap(balance -> balance.torques().stream())
                .filter(Balance.Torques::shareIsAssumed)
                .count();
        assertTrue(shared >= 50, () -> shared + " share");
    }
}
