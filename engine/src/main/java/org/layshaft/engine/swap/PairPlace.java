package org.layshaft.engine.swap;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/**
 * Where a pair stands, and what it does to the ratio of one gear.
 *
 * @param firsts ids of the gears that are changed together as the first of the mesh
 * @param seconds the same as the second
 * @param ratio of the box in that gear, without sign
 * @param powerOfFirst 1 where the ratio grows as the teeth of the first gear do, -1 where it falls so, 0 for an idler
 * @param powerOfSecond the same of the second gear
 */
record PairPlace(
        Layout layout,
        Mesh mesh,
        List<String> firsts,
        List<String> seconds,
        Fraction ratio,
        int powerOfFirst,
        int powerOfSecond) {

    Gear first() {
        return layout.gear(mesh.first());
    }

    Gear second() {
        return layout.gear(mesh.second());
    }

    OptionalDouble moduleMm() {
        return first().moduleMm().isPresent() ? first().moduleMm() : second().moduleMm();
    }

    double helixDeg() {
        return first().helixDeg();
    }

    boolean isInternal() {
        return first().form() == GearForm.INTERNAL || second().form() == GearForm.INTERNAL;
    }

    boolean ringIsLarger(int firstTeeth, int secondTeeth) {
        return first().form() == GearForm.INTERNAL ? firstTeeth > secondTeeth : secondTeeth > firstTeeth;
    }

    /** Whether one of the gears meshes with others too, so that module and helix must stay. */
    boolean isBound() {
        return firstIsBound() || secondIsBound();
    }

    boolean firstIsBound() {
        return firsts.stream().anyMatch(gear -> meshesBeside(gear, seconds));
    }

    boolean secondIsBound() {
        return seconds.stream().anyMatch(gear -> meshesBeside(gear, firsts));
    }

    private boolean meshesBeside(String gear, List<String> mates) {
        return layout.everyMesh().anyMatch(other -> other.joins(gear) && !mates.contains(other.other(gear)));
    }

    Fraction ratioWith(int firstTeeth, int secondTeeth) {
        return ratio.times(power(Fraction.of(firstTeeth, first().teeth()), powerOfFirst))
                .times(power(Fraction.of(secondTeeth, second().teeth()), powerOfSecond));
    }

    Change change(int firstTeeth, int secondTeeth, double moduleMm, double helixDeg) {
        Change change = Change.NONE;
        for (String id : firsts) {
            change = change.with(cut(layout.gear(id), firstTeeth, moduleMm, helixDeg));
        }
        for (String id : seconds) {
            change = change.with(cut(layout.gear(id), secondTeeth, moduleMm, helixDeg));
        }
        return change;
    }

    private static Gear cut(Gear gear, int teeth, double moduleMm, double helixDeg) {
        return new Gear(
                gear.named(),
                gear.carrier(),
                gear.seat(),
                gear.form(),
                teeth,
                OptionalDouble.of(moduleMm),
                helixDeg,
                helixDeg == 0 ? Optional.empty() : gear.hand(),
                gear.pressureAngleDeg());
    }

    private static Fraction power(Fraction factor, int power) {
        return power == 0 ? Fraction.ONE : power > 0 ? factor : factor.inverse();
    }

    /** Ids of all gears that are changed. */
    Stream<String> gears() {
        return Stream.concat(firsts.stream(), seconds.stream());
    }
}
