package org.layshaft.engine.swap;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.AxleMismatch;
import org.layshaft.engine.road.RollingCircumference;
import org.layshaft.engine.stated.Telling;

/**
 * Two axles, or outputs on their way to axles, that one gear drives each at a fixed ratio, so that nothing between them
 * can give.
 *
 * @param gear its derived name before the change
 * @param first id of the differential, or of the output
 * @param ratioOfFirst turns of the input for one turn of it, by its own path; less than 0 for the other sense
 */
public record TiedAxles(String gear, String first, Fraction ratioOfFirst, String second, Fraction ratioOfSecond) {

    /** Whether nothing winds up on wheels that are all alike. */
    public boolean match() {
        return ratioOfFirst.equals(ratioOfSecond);
    }

    /**
     * What comes of it on the road; the first of the two stands for the front axle.
     *
     * @param tyre of all wheels
     */
    public AxleMismatch mismatch(Telling<RollingCircumference> tyre) {
        return new AxleMismatch(
                Optional.of(ratioOfFirst.absolute()), tyre, Optional.of(ratioOfSecond.absolute()), tyre);
    }
}
