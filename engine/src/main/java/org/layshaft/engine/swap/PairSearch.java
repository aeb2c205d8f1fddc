package org.layshaft.engine.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.layout.Gear;

/** Goes through all teeth that a pair may have. */
record PairSearch(PairPlace place, GearRules rules, double centreMm, Target target) {
    /** Halvings that take a helix angle to the last digit of a double. */
    private static final int HALVINGS = 60;

    /** Those that meet the target, each number of teeth and module with the helix nearest to what is there now. */
    Stream<Proposal> all() {
        return modules()
                .flatMap(module -> teeth(place.firstIsBound(), place.first())
                        .boxed()
                        .flatMap(first -> teeth(place.secondIsBound(), place.second())
                                .boxed()
                                .flatMap(second -> proposal(module, first, second).stream())));
    }

    private Stream<Double> modules() {
        SortedSet<Double> modules = new TreeSet<>();
        place.moduleMm().ifPresent(modules::add);
        if (!place.isBound()) {
            modules.addAll(rules.modulesMm());
        }
        return modules.stream();
    }

    /** A gear that meshes elsewhere too stays as it is. */
    private IntStream teeth(boolean bound, Gear gear) {
        return bound ? IntStream.of(gear.teeth()) : IntStream.rangeClosed(rules.teethLeast(), rules.teethMost());
    }

    private Optional<Proposal> proposal(double moduleMm, int first, int second) {
        Fraction ratio = place.ratioWith(first, second);
        if (!target.isMetBy(ratio) || place.isInternal() && !place.ringIsLarger(first, second)) {
            return Optional.empty();
        }
        Teeth teeth = new Teeth(moduleMm, first, second);
        OptionalDouble helix = helix(teeth);
        return helix.isEmpty() ? Optional.empty() : Optional.of(proposal(teeth, helix.getAsDouble(), ratio));
    }

    private Proposal proposal(Teeth teeth, double helixDeg, Fraction ratio) {
        return new Proposal(
                place.mesh(),
                teeth.first,
                teeth.second,
                teeth.moduleMm,
                helixDeg,
                centreMm,
                shiftSum(teeth, helixDeg),
                ratio,
                target.distance(ratio),
                place.moduleMm().equals(OptionalDouble.of(teeth.moduleMm)),
                helixDeg == place.helixDeg(),
                place.change(teeth.first, teeth.second, teeth.moduleMm, helixDeg));
    }

    /** The present one where the shifts allow it; else the one with the least shift. */
    private OptionalDouble helix(Teeth teeth) {
        List<Double> tried = new ArrayList<>(List.of(place.helixDeg()));
        if (!place.isBound()) {
            tried.add(helixOfLeastShift(teeth));
        }
        return tried.stream()
                .filter(helix -> isAllowed(teeth, helix))
                .mapToDouble(helix -> helix)
                .findFirst();
    }

    private boolean isAllowed(Teeth teeth, double helixDeg) {
        double sum = shiftSum(teeth, helixDeg);
        return rules.allowsShift(sum) && sum >= undercutBelow(teeth, helixDeg);
    }

    private double helixOfLeastShift(Teeth teeth) {
        double low = rules.helixLeastDeg();
        double high = rules.helixMostDeg();
        if (spare(teeth, low) <= 0) {
            return low;
        }
        if (spare(teeth, high) >= 0) {
            return high;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (spare(teeth, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * How much more shift there is than is wanted: the nearest to none that the rules and the feet of the teeth allow. The
     * larger the helix angle, the further apart the gears would stand without shift, and the less is left.
     */
    private double spare(Teeth teeth, double helixDeg) {
        double wanted = Math.max(rules.shiftLeast(), Math.min(0, rules.shiftMost()));
        return shiftSum(teeth, helixDeg) - Math.max(wanted, undercutBelow(teeth, helixDeg));
    }

    /** Below every number where the axes stand too near each other for these teeth. */
    private double shiftSum(Teeth teeth, double helixDeg) {
        return InvolutePair.shiftSumAt(first(teeth, helixDeg), second(teeth, helixDeg), centreMm)
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** What the shifts must come to for neither gear to be undercut; inside a ring the pinion may take what it needs. */
    private double undercutBelow(Teeth teeth, double helixDeg) {
        OptionalDouble ofFirst = first(teeth, helixDeg).smallestShift();
        OptionalDouble ofSecond = second(teeth, helixDeg).smallestShift();
        return ofFirst.isEmpty() || ofSecond.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : ofFirst.getAsDouble() + ofSecond.getAsDouble();
    }

    private InvoluteGear first(Teeth teeth, double helixDeg) {
        return gear(place.first(), teeth.first, teeth.moduleMm, helixDeg);
    }

    private InvoluteGear second(Teeth teeth, double helixDeg) {
        return gear(place.second(), teeth.second, teeth.moduleMm, helixDeg);
    }

    private InvoluteGear gear(Gear gear, int teeth, double moduleMm, double helixDeg) {
        return InvoluteGear.of(gear.form(), teeth, moduleMm, place.first().pressureAngleDeg(), helixDeg, 0);
    }

    private record Teeth(double moduleMm, int first, int second) {}
}
