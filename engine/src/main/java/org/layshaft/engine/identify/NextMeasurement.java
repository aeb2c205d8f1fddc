package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.identify.FurtherMeasurement.WouldBe;
import org.layshaft.engine.involute.InvoluteGear;

/** Looks for the measurement, not yet made, that would tell most of the best candidates apart. */
final class NextMeasurement {
    private static final int WEIGHED = 6;

    private NextMeasurement() {}

    /** @param ranked candidates that agree with all measurements so far, best first */
    static Optional<FurtherMeasurement> of(BenchGear bench, List<Candidate> ranked) {
        List<Candidate> best = ranked.stream().limit(WEIGHED).toList();
        FurtherMeasurement chosen = null;
        double most = 0;
        for (Measurement possible : possible(bench, best.get(0).gear())) {
            Optional<FurtherMeasurement> further = further(possible, best);
            double told = further.map(NextMeasurement::pairsTold).orElse(0.0);
            if (told > most) {
                most = told;
                chosen = further.get();
            }
        }
        return Optional.ofNullable(chosen);
    }

    private static List<Measurement> possible(BenchGear bench, InvoluteGear like) {
        List<Measurement> possible = new ArrayList<>();
        if (!like.isInternal() || like.helixDeg() == 0) {
            possible.add(SpanMeasure.of(like.spanTeeth(), 1));
            possible.add(SpanMeasure.of(like.spanTeeth() + 1, 1));
        }
        possible.add(TipDiameter.of(1, like.moduleMm()));
        possible.add(PinMeasure.of(Math.round(4 * like.usualPinMm()) / 4.0, 1));
        possible.add(RootDiameter.of(1, like.moduleMm()));
        possible.removeIf(measurement ->
                bench.measurements().stream().anyMatch(made -> made.what().equals(measurement.what())));
        return possible;
    }

    private static Optional<FurtherMeasurement> further(Measurement possible, List<Candidate> best) {
        List<WouldBe> wouldBe = new ArrayList<>();
        for (Candidate candidate : best) {
            OptionalDouble computed = possible.computed(candidate.gear());
            if (computed.isEmpty()) {
                return Optional.empty();
            }
            wouldBe.add(new WouldBe(candidate, computed.getAsDouble()));
        }
        return Optional.of(new FurtherMeasurement(possible.what(), possible.allowance(), List.copyOf(wouldBe)));
    }

    /** Pairs further apart than both allowances; among pairs, those with the best candidate count double. */
    private static double pairsTold(FurtherMeasurement further) {
        double pairs = 0;
        for (int one = 0; one < further.wouldBe().size(); one++) {
            for (int other = one + 1; other < further.wouldBe().size(); other++) {
                double apart = Math.abs(further.wouldBe().get(one).mm()
                        - further.wouldBe().get(other).mm());
                if (apart > 2 * further.allowance()) {
                    pairs += one == 0 ? 2 : 1;
                }
            }
        }
        return pairs;
    }
}
