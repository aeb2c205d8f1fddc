package org.layshaft.engine.api;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/**
 * What a sound layout comes to.
 *
 * @param gears first to top and then reverse
 * @param differences printed ratios that are not what is derived
 */
public record Box(Layout layout, List<DerivedGear> gears, List<Difference> differences) {
    public Box {
        gears = List.copyOf(gears);
        differences = List.copyOf(differences);
    }

    /**
     * A gear.
     *
     * @param name by falling ratio, {@code 1} upward; {@code R} for reverse, {@code R1} and {@code R2} for two; with what
     *     the places of other levers are called, {@code 3 low}; those alone where all are called, {@code high
     *     two-wheel}; {@code drive} where there is nothing to select
     * @param pushes everything that the levers push for it, that of the gear lever first; empty where nothing has to be engaged
     * @param ratio input turns for one turn of the output, always positive
     */
    public record DerivedGear(
            String name,
            Direction direction,
            List<Push> pushes,
            Fraction ratio,
            List<PathStep> path,
            Stance stance,
            Motion motion) {
        public DerivedGear {
            pushes = List.copyOf(pushes);
            path = List.copyOf(path);
        }

        /** What the first lever does; empty where nothing has to be engaged. */
        public Optional<Push> first() {
            return pushes.stream().findFirst();
        }

        /** Whether some lever engages this for it. */
        public boolean takes(String member, Side side) {
            return pushes.stream().anyMatch(push -> push.member().equals(member) && push.side() == side);
        }
    }

    /**
     * What one lever does.
     *
     * @param rail id of the rail that is pushed, or of the clutch that is closed
     * @param side to which; a closed clutch stands at the front
     * @param member id of what then engages: a sleeve, a sliding gear, or the clutch
     */
    public record Push(String rail, Side side, String member) {}

    /**
     * A printed ratio that is not what is derived, or a gear that is printed and not derived.
     *
     * @param says both numbers, in a sentence
     */
    public record Difference(String gear, String says) {}
}
