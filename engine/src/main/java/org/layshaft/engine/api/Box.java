package org.layshaft.engine.api;

import java.util.List;
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
     *     the places of other levers are called, {@code 3 low}; those alone where all are called, {@code high two-wheel}
     * @param rail id of the rail that selects it, or of the clutch; the first of several
     * @param side to which the rail is pushed
     * @param member id of the sleeve or sliding gear that engages it
     * @param pushes everything that the levers push for it, the first as above
     * @param ratio input turns for one turn of the output, always positive
     */
    public record DerivedGear(
            String name,
            String rail,
            Side side,
            String member,
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
