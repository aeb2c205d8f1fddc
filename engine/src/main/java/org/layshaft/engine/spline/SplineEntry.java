package org.layshaft.engine.spline;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.spline.SplineComparison.Outcome;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * Whether a splined shaft enters a hub and carries torque in it: everything that was held against each other. How much
 * of their length is in contact is another matter, see {@link #engagedLengthMm}.
 */
public record SplineEntry(Spline shaft, Spline hub, List<SplineComparison> comparisons) {

    /** Whether the shaft enters and carries torque. */
    public enum Verdict {
        ENTERS,
        DOES_NOT,
        CANNOT_BE_TOLD
    }

    /**
     * Holds a shaft against a hub.
     *
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where they are not a shaft and a hub
     */
    public static SplineEntry of(Spline shaft, Spline hub) {
        new Objections()
                .unless(shaft.member() == Member.SHAFT, "%s is a hub's. A shaft's is needed.", shaft.designation())
                .unless(hub.member() == Member.HUB, "%s is a shaft's. A hub's is needed.", hub.designation())
                .refuse();
        return new SplineEntry(shaft, hub, SplineComparisons.of(shaft, hub));
    }

    public Verdict verdict() {
        if (!with(Outcome.BARS).isEmpty()) {
            return Verdict.DOES_NOT;
        }
        return with(Outcome.CANNOT_BE_TOLD).isEmpty() ? Verdict.ENTERS : Verdict.CANNOT_BE_TOLD;
    }

    public List<SplineComparison> with(Outcome outcome) {
        return comparisons.stream()
                .filter(comparison -> comparison.outcome() == outcome)
                .toList();
    }

    /** The length over which the flanks can touch, at most: the shorter of the two. */
    public static Telling<Double> engagedLengthMm(Optional<Double> ofShaftMm, Optional<Double> ofHubMm) {
        return Telling.of(ofShaftMm, "the usable length of the shaft's spline")
                .with(Telling.of(ofHubMm, "the usable length of the hub's spline"), Math::min);
    }
}
