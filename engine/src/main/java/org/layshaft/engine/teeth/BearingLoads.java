package org.layshaft.engine.teeth;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/** What two bearings bear across a shaft that stands in them and in nothing else. */
public record BearingLoads(BearingLoad first, BearingLoad second) {

    /**
     * A bearing and its place.
     *
     * @param atMm along the shaft toward the rear; empty where it is not stated
     */
    public record Place(String bearing, OptionalDouble atMm) {

        private Telling<Double> told() {
            return atMm.isPresent()
                    ? Telling.told(atMm.getAsDouble())
                    : Telling.missing("the place of %s along its shaft".formatted(bearing));
        }
    }

    /**
     * What a bearing puts on the shaft.
     *
     * @param upN upward, in N
     * @param rightN to the right as seen from the front, in N
     */
    public record BearingLoad(String bearing, double upN, double rightN) {

        /** Both planes together, in N. */
        public double radialN() {
            return Math.hypot(upN, rightN);
        }
    }

    /**
     * From the balance of forces and of moments in both planes.
     *
     * @throws ImpossibleFactsException where both bearings stand in one place
     */
    public static Telling<BearingLoads> of(List<PlacedForce> forces, Place first, Place second) {
        return first.told().with(second.told(), (from, to) -> {
            new Objections()
                    .unless(
                            !from.equals(to),
                            "%s and %s both stand at %s mm. Two bearings hold a shaft from different places.",
                            first.bearing(),
                            second.bearing(),
                            from)
                    .refuse();
            double upAtSecond = reaction(forces, PlacedForce::upN, PlacedForce::tiltUpNmm, from, to);
            double rightAtSecond = reaction(forces, PlacedForce::rightN, PlacedForce::tiltRightNmm, from, to);
            return new BearingLoads(
                    new BearingLoad(
                            first.bearing(),
                            -sum(forces, PlacedForce::upN) - upAtSecond,
                            -sum(forces, PlacedForce::rightN) - rightAtSecond),
                    new BearingLoad(second.bearing(), upAtSecond, rightAtSecond));
        });
    }

    /** In one plane: what the bearing at {@code to} must push with, so that nothing turns about {@code from}. */
    private static double reaction(
            List<PlacedForce> forces,
            ToDoubleFunction<PlacedForce> across,
            ToDoubleFunction<PlacedForce> tilt,
            double from,
            double to) {
        double moment =
                sum(forces, force -> (force.atMm() - from) * across.applyAsDouble(force) + tilt.applyAsDouble(force));
        return -moment / (to - from);
    }

    private static double sum(List<PlacedForce> forces, ToDoubleFunction<PlacedForce> part) {
        return forces.stream().mapToDouble(part).sum();
    }
}
