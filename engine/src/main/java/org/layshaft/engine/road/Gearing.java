package org.layshaft.engine.road;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * The ratios from the engine to the wheels.
 *
 * @param ratios of the box by gear name, turns of its input for one turn of its output, from the lowest gear to the
 *     highest; reverse is less than 0
 * @param behind turns of the box's output for one turn of the wheels: the axle ratio, times those of a transfer box and
 *     the like; 1 where the box's output is the differential; empty where nobody has stated it
 */
public record Gearing(Map<String, Fraction> ratios, Optional<Fraction> behind) {

    /** Throws {@link ImpossibleFactsException} for a ratio of 0, or one behind the box that is not more than 0. */
    public Gearing {
        ratios = Collections.unmodifiableMap(new LinkedHashMap<>(ratios));
        Objections objections = new Objections().unlessPositive(behind, "the axle ratio");
        ratios.forEach((gear, ratio) ->
                objections.unless(!ratio.isZero(), "The ratio of gear %s is 0. A gear drives, or is none.", gear));
        objections.refuse();
    }

    /** Turns of the engine for one turn of the wheels, without sign. */
    public Telling<Fraction> overall(String gear) {
        return Telling.of(behind, "the axle ratio").map(ratio -> size(gear).times(ratio));
    }

    /** Between each forward gear and the next higher one. */
    public List<Step> steps() {
        List<String> forward = ratios.keySet().stream()
                .filter(gear -> ratios.get(gear).signum() > 0)
                .toList();
        List<Step> steps = new ArrayList<>();
        for (int i = 1; i < forward.size(); i++) {
            String lower = forward.get(i - 1);
            String higher = forward.get(i);
            steps.add(new Step(lower, higher, size(lower).over(size(higher))));
        }
        return List.copyOf(steps);
    }

    /** What the engine turns at once another gear is in, the road speed being the same. */
    public Fraction rpmAfterShift(String from, String to, Fraction rpm) {
        return rpm.times(size(to)).over(size(from));
    }

    /** Throws {@link IllegalArgumentException} for a gear that there is not. */
    Fraction size(String gear) {
        Fraction ratio = ratios.get(gear);
        if (ratio == null) {
            throw new IllegalArgumentException("There is no gear '%s' among %s".formatted(gear, ratios.keySet()));
        }
        return ratio.absolute();
    }

    /**
     * From a gear to the next higher one.
     *
     * @param ratio ratio of the lower over that of the higher
     */
    public record Step(String lower, String higher, Fraction ratio) {

        /** The part of its speed that the engine loses on the way up. */
        public Fraction drop() {
            return Fraction.ONE.minus(ratio.inverse());
        }
    }
}
