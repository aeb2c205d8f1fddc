package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.Shown;

/** Says which measurement stands against the others, where no standard gear agrees with all. */
final class Contradictions {
    private Contradictions() {}

    static List<String> of(BenchGear bench, List<Candidate> nearest) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                nearest.isEmpty()
                        ? "No standard gear comes near these measurements."
                        : "No standard gear agrees with all of these measurements.");
        for (Measurement measurement : bench.measurements()) {
            if (!(measurement instanceof RolledHelix) && bench.measurements().size() > 2) {
                bestWithout(bench, measurement).ifPresent(candidate -> sentences.add(without(measurement, candidate)));
            }
        }
        if (sentences.size() == 1) {
            sentences.add("Leaving one of them out does not help: count the teeth again, and measure again.");
        }
        return List.copyOf(sentences);
    }

    private static Optional<Candidate> bestWithout(BenchGear bench, Measurement left) {
        return Search.fitted(bench.without(left)).stream()
                .filter(Candidate::isConsistent)
                .findFirst();
    }

    private static String without(Measurement measurement, Candidate candidate) {
        InvoluteGear gear = candidate.gear();
        String expected = measurement.computed(gear).isPresent()
                ? "where it would be %s %s"
                        .formatted(Shown.decimal(measurement.computed(gear).getAsDouble()), measurement.unit())
                : "which cannot be measured on it";
        return "Without %s the rest agrees with %s; it was measured as %s %s, %s: measure it again."
                .formatted(
                        measurement.what(),
                        candidate.words(),
                        Shown.decimal(measurement.measured()),
                        measurement.unit(),
                        expected);
    }
}
