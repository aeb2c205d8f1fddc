package org.layshaft.engine.involute;

import java.util.List;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/** What two gears must have in common to mesh at all. The question is put first, for it is put very often. */
final class Matching {
    /** Modules and angles stated in rounded decimals may differ by so much, as a share. */
    private static final double ALIKE = 1e-6;

    private Matching() {}

    static void check(InvoluteGear first, InvoluteGear second) {
        if (!(alike(first.moduleMm(), second.moduleMm())
                && alike(first.pressureAngleDeg(), second.pressureAngleDeg())
                && alike(first.helixDeg(), second.helixDeg())
                && !(first.isInternal() && second.isInternal())
                && teeth(first, second) > 0)) {
            refuse(first, second);
        }
    }

    /** The least distance at which a tangent passes between, or for a ring outside, the base circles. */
    static double leastCentreMm(InvoluteGear first, InvoluteGear second) {
        return first.baseMm() / first.teeth() * teeth(first, second) / 2;
    }

    /** The sum of the teeth; for an internal pair, those of the ring less those of the pinion. */
    static int teeth(InvoluteGear first, InvoluteGear second) {
        return (second.isInternal() ? -1 : 1) * first.teeth() + (first.isInternal() ? -1 : 1) * second.teeth();
    }

    static void refuseCentre(InvoluteGear first, InvoluteGear second, double centreMm) {
        throw new ImpossibleFactsException(List.of(
                "The centre distance is %s mm. Teeth like these touch only from %s mm on: nearer, no tangent passes between the base circles."
                        .formatted(Shown.decimal(centreMm), Shown.decimal(leastCentreMm(first, second)))));
    }

    private static void refuse(InvoluteGear first, InvoluteGear second) {
        new Objections()
                .unless(
                        alike(first.moduleMm(), second.moduleMm()),
                        "The modules are %s and %s mm. Gears that mesh have one normal module.",
                        Shown.decimal(first.moduleMm()),
                        Shown.decimal(second.moduleMm()))
                .unless(
                        alike(first.pressureAngleDeg(), second.pressureAngleDeg()),
                        "The pressure angles are %s and %s degrees. Gears that mesh have one normal pressure angle.",
                        Shown.decimal(first.pressureAngleDeg()),
                        Shown.decimal(second.pressureAngleDeg()))
                .unless(
                        alike(first.helixDeg(), second.helixDeg()),
                        "The helix angles are %s and %s degrees. Gears that mesh on parallel shafts have one helix angle.",
                        Shown.decimal(first.helixDeg()),
                        Shown.decimal(second.helixDeg()))
                .unless(
                        !(first.isInternal() && second.isInternal()),
                        "Both gears are internal. At least one must have its teeth outside.")
                .unless(
                        first.isInternal() && second.isInternal() || teeth(first, second) > 0,
                        "The gears have %s and %s teeth. The internal one must have more than the one inside it.",
                        first.teeth(),
                        second.teeth())
                .refuse();
    }

    private static boolean alike(double one, double other) {
        return Math.abs(one - other) <= ALIKE * Math.max(one, other);
    }
}
