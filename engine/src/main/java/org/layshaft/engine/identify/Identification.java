package org.layshaft.engine.identify;

import java.util.List;
import java.util.Optional;

/**
 * What an unknown gear may be.
 *
 * @param candidates that agree with every measurement, best first; where there are none, the nearest that do not
 * @param contradictions sentences, where no standard gear agrees with all the measurements: which one stands against
 *     the others
 * @param next what to measure to tell the best apart; none where there is nothing to tell apart, or nothing that does
 */
public record Identification(
        List<Candidate> candidates, List<String> contradictions, Optional<FurtherMeasurement> next) {

    public boolean isConsistent() {
        return contradictions.isEmpty();
    }

    /** Those of the best rank: more than one where the measurements do not tell them apart. */
    public List<Candidate> best() {
        return candidates.stream().filter(candidate -> candidate.rank() == 1).toList();
    }
}
