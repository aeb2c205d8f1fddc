package org.layshaft.engine.identify;

/**
 * A measurement held against what it comes to on a candidate.
 *
 * @param computed in the measurement's unit; not a number where it cannot be measured on the candidate
 */
public record Residual(Measurement measurement, double computed) {

    /** Measured less computed. */
    public double difference() {
        return measurement.measured() - computed;
    }

    /** Whether the difference lies within the allowance. */
    public boolean isWithinAllowance() {
        return Math.abs(difference()) <= measurement.allowance();
    }

    /** The difference in allowances; without bound where there is none. */
    double share() {
        double share = difference() / measurement.allowance();
        return Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
    }
}
