package org.layshaft.engine.involute;

import java.util.OptionalDouble;

/** Measuring over two pins in opposite spaces, or between them in a ring; in helical teeth, balls. */
final class Pins {
    private Pins() {}

    static OptionalDouble mm(InvoluteGear gear, double pinMm) {
        double involute = gear.outward() * (pinMm / perTurn(gear) - space(gear, gear.shift()));
        if (!(involute > 0)) {
            return OptionalDouble.empty();
        }
        double centres = gear.baseMm() / Math.cos(Involute.angleOf(involute));
        return OptionalDouble.of(centres * across(gear) + gear.outward() * pinMm);
    }

    static OptionalDouble shift(InvoluteGear gear, double pinMm, double overPinsMm) {
        double cosine = gear.baseMm() * across(gear) / (overPinsMm - gear.outward() * pinMm);
        if (!(cosine > 0 && cosine <= 1)) {
            return OptionalDouble.empty();
        }
        double space = pinMm / perTurn(gear) - gear.outward() * Involute.of(Math.acos(cosine));
        double unshifted = space(gear, 0);
        return OptionalDouble.of(
                gear.outward() * (unshifted - space) * gear.teeth() / (2 * Math.tan(gear.normalAngle())));
    }

    static double usualMm(InvoluteGear gear) {
        double touched = Math.max(gear.baseMm(), gear.referenceMm() + 2 * gear.shift() * gear.moduleMm());
        double space = space(gear, gear.shift());
        double centre = gear.outward() * space + Math.tan(Math.acos(gear.baseMm() / touched));
        return perTurn(gear) * (space + gear.outward() * Involute.of(centre));
    }

    /** Half the space as an angle seen from the axis, taken down to the base circle. */
    private static double space(InvoluteGear gear, double shift) {
        double atReference = (Math.PI / 2 - gear.outward() * 2 * shift * Math.tan(gear.normalAngle())) / gear.teeth();
        return atReference - gear.outward() * Involute.of(gear.transverseAngle());
    }

    private static double perTurn(InvoluteGear gear) {
        return gear.teeth() * gear.moduleMm() * Math.cos(gear.normalAngle());
    }

    /** With an odd number of teeth no space lies straight across from another. */
    private static double across(InvoluteGear gear) {
        return gear.teeth() % 2 == 0 ? 1 : Math.cos(Math.PI / 2 / gear.teeth());
    }
}
