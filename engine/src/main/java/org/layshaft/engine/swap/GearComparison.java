package org.layshaft.engine.swap;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.BoxForces;
import org.layshaft.engine.teeth.ShaftThrust;

/**
 * What one place of the levers gives, before and after.
 *
 * @param pushes what the levers push for it
 * @param before empty where it gave no gear of its own
 * @param after empty where it gives none any more
 * @param outcome what input and output do after the change
 */
public record GearComparison(
        List<Box.Push> pushes, Optional<GearFigures> before, Optional<GearFigures> after, Motion.Outcome outcome) {
    public GearComparison {
        pushes = List.copyOf(pushes);
    }

    /** Whether it gives a gear of the same name. */
    public boolean nameHolds() {
        return before.map(GearFigures::gear).equals(after.map(GearFigures::gear));
    }

    /** The ratio after over the ratio before, without sign; empty where it does not drive in both. */
    public Optional<Fraction> factor() {
        return before.flatMap(
                was -> after.map(is -> is.ratio().over(was.ratio()).absolute()));
    }

    /** Whether the output turns the other way now. */
    public boolean isTurnedRound() {
        return before.flatMap(was ->
                        after.map(is -> is.ratio().signum() != was.ratio().signum()))
                .orElse(false);
    }

    /** Engine speed at the cruising speed, after less before. */
    public Telling<Fraction> rpmMoreAtCruise() {
        return told(before)
                .then(GearFigures::rpmAtCruise)
                .with(told(after).then(GearFigures::rpmAtCruise), (was, is) -> is.minus(was));
    }

    /** Of every shaft on which a gear carries torque, before or after. */
    public List<ThrustComparison> thrusts() {
        Set<String> shafts = new TreeSet<>();
        Stream.of(before, after)
                .flatMap(Optional::stream)
                .flatMap(figures -> figures.forces().value().stream())
                .forEach(forces -> shafts.addAll(forces.thrusts().keySet()));
        return shafts.stream()
                .map(shaft -> new ThrustComparison(shaft, on(shaft, before), on(shaft, after)))
                .toList();
    }

    private static Telling<Optional<ShaftThrust>> on(String shaft, Optional<GearFigures> figures) {
        Telling<BoxForces> forces = told(figures).then(GearFigures::forces);
        return forces.map(all -> Optional.ofNullable(all.thrusts().get(shaft)));
    }

    private static Telling<GearFigures> told(Optional<GearFigures> figures) {
        return Telling.of(figures, "a gear of its own in this place of the levers");
    }
}
