package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.HashMap;
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

    /** The input turning once, where it can; and whatever else moves the output. */
    private static List<Map<String, Fraction>> motions(Train train, Speeds speeds) {
        List<Map<String, Fraction>> motions = new ArrayList<>();
        if (speeds.arePossible()) {
            motions.add(speeds.asGiven());
        }
        motions.addAll(speeds.freedomsOf(train.output()));
        return motions;
    }

    private static List<Certificate.Proof> proofs(Train train, Speeds speeds, Outcome outcome) {
        List<Map<String, Fraction>> sums = new ArrayList<>();
        if (outcome == Outcome.LOCKED || outcome == Outcome.INPUT_HELD) {
            sums.add(Map.of(train.input(), Fraction.ONE));
        }
        if (outcome == Outcome.LOCKED || outcome == Outcome.OUTPUT_HELD) {
            sums.add(Map.of(train.output(), Fraction.ONE));
        }
        if (outcome == Outcome.DRIVES) {
            Fraction ratio = speeds.of(train.output()).orElseThrow().inverse();
            sums.add(Map.of(train.input(), Fraction.ONE, train.output(), ratio.negated()));
        }
        return sums.stream().map(sum -> proof(train, speeds, sum)).toList();
    }

    private static Certificate.Proof proof(Train train, Speeds speeds, Map<String, Fraction> sum) {
        Map<Integer, Fraction> numbered = new HashMap<>();
        sum.forEach((body, coefficient) -> numbered.put(train.number(body), coefficient));
        return new Certificate.Proof(
                sum, Forces.addingUpTo(numbered, speeds.forest()).orElseThrow().byConnection());
    }
}
