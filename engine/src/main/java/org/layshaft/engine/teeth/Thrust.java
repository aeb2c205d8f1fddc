package org.layshaft.engine.teeth;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Side;

/**
 * What all gears on one shaft push it along with.
 *
 * @param newtons at least 0
 * @param toward empty where the thrusts cancel
 */
public record Thrust(double newtons, Optional<Side> toward) {
    /** Parts of the sum of all thrusts that are lost in reckoning. */
    private static final double ROUNDING = 1e-9;

    /** The thrusts on the gears of one shaft together. */
    public static Thrust of(Collection<ToothForce> onShaft) {
        double rearward = onShaft.stream().mapToDouble(ToothForce::rearwardN).sum();
        double all = onShaft.stream().mapToDouble(ToothForce::axialN).sum();
        if (Math.abs(rearward) <= ROUNDING * all) {
            return new Thrust(0, Optional.empty());
        }
        return new Thrust(Math.abs(rearward), Optional.of(rearward > 0 ? Side.REAR : Side.FRONT));
    }

    /**
     * Which of the shaft's bearings takes it. Cannot be told while it is missing of any of them which way it takes
     * thrust.
     */
    public Telling<ThrustSeat> takenBy(List<ThrustBearing> bearings) {
        if (toward.isEmpty()) {
            return Telling.told(new ThrustSeat.NothingToTake());
        }
        List<Telling<ThrustBearing>> known = bearings.stream()
                .map(bearing -> Telling.of(bearing.takes(), "which way %s takes thrust".formatted(bearing.name()))
                        .map(takes -> bearing))
                .toList();
        return Telling.all(known)
                .map(all -> all.stream()
                        .filter(bearing -> bearing.takesToward(toward.get()))
                        .map(ThrustBearing::name)
                        .toList())
                .map(ThrustSeat::of);
    }
}
