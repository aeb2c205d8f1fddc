package org.layshaft.engine.road;

/** What a vehicle climbs at a steady speed. */
public sealed interface Gradient {

    /**
     * A slope.
     *
     * @param percent rise over level distance, times 100; less than 0 where it takes a slope down to keep the speed up
     */
    record Slope(double percent) implements Gradient {}

    /** The effort would do for any slope: the grip of the tyres decides. */
    record AnySlope() implements Gradient {}

    /** Drag is more than effort and weight together: no slope down keeps the speed up. */
    record NoSlope() implements Gradient {}

    /**
     * Solves effort/weight = sin(slope) + rolling · cos(slope).
     *
     * @param effortPerWeight what is left of the effort after drag, over the weight
     */
    static Gradient of(double effortPerWeight, double rolling) {
        if (effortPerWeight >= 1) {
            return new AnySlope();
        }
        if (effortPerWeight <= -1) {
            return new NoSlope();
        }
        double slope = Math.asin(effortPerWeight / Math.hypot(1, rolling)) - Math.atan(rolling);
        return new Slope(100 * Math.tan(slope));
    }
}
