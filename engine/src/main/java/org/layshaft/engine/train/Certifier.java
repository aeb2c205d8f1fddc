package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/** Draws up certificates for what {@link TrainSolver} says. Stateless. */
public final class Certifier {
    private Certifier() {}

    public static Certificate certify(Train train) {
        Speeds speeds = Speeds.perTurnOfInput(train);
        Outcome outcome = TrainSolver.outcome(train, speeds);
        return new Certificate(outcome, motions(train, speeds), proofs(train, speeds, outcome));
    }

    /** The input turning once, where it can; and whatever else moves an output. */
    private static List<Map<String, Fraction>> motions(Train train, Speeds speeds) {
        List<Map<String, Fraction>> motions = new ArrayList<>();
        if (speeds.arePossible()) {
            motions.add(speeds.asGiven());
        }
        train.outputs().stream()
                .flatMap(output -> speeds.freedomsOf(output).stream())
                .distinct()
                .forEach(motions::add);
        return motions;
    }

    private static List<Certificate.Proof> proofs(Train train, Speeds speeds, Outcome outcome) {
        List<Map<String, Fraction>> sums = new ArrayList<>();
        if (outcome == Outcome.LOCKED || outcome == Outcome.INPUT_HELD) {
            sums.add(Map.of(train.input(), Fraction.ONE));
        }
        if (outcome == Outcome.LOCKED || outcome == Outcome.OUTPUT_HELD) {
            train.outputs().forEach(output -> sums.add(Map.of(output, Fraction.ONE)));
        }
        if (outcome == Outcome.DRIVES) {
            train.outputs()
                    .forEach(output -> sums.add(Map.of(
                            train.input(),
                            Fraction.ONE,
                            output,
                            speeds.of(output).orElseThrow().inverse().negated())));
        }
        return sums.stream().map(sum -> proof(train, sum)).toList();
    }

    private static Certificate.Proof proof(Train train, Map<String, Fraction> sum) {
        return new Certificate.Proof(
                sum, Combination.addingUpTo(sum, train).orElseThrow().multipliers());
    }
}
