package org.layshaft.engine.identify;

import java.util.List;

/**
 * What to measure next to tell the best candidates apart.
 *
 * @param what as it stands in a sentence: {@code the span over 4 teeth}
 * @param allowance that its difference is weighed with
 * @param wouldBe what it would come to on each candidate
 */
public record FurtherMeasurement(String what, double allowance, List<WouldBe> wouldBe) {

    public record WouldBe(Candidate candidate, double mm) {}
}
