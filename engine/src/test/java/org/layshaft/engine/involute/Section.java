package org.layshaft.engine.involute;

/** The transverse section of a gear for the tests that roll: what defines it, and points made by unwinding a string. */
final class Section {
    final int teeth;
    final double baseRadius;
    final double tipRadius;
    final double formRadius;
    private final boolean internal;
    private final double halfAtReference;
    private final double windAtReference;

    Section(InvoluteGear gear) {
        double helix = Math.toRadians(gear.helixDeg());
        double rackSlope = Math.tan(Math.toRadians(gear.pressureAngleDeg()));
        double referenceRadius = gear.teeth() * gear.moduleMm() / Math.cos(helix) / 2;
        double rackThickness = gear.moduleMm() * Math.PI / 2;
        double thicker = 2 * gear.shift() * gear.moduleMm() * rackSlope;
        teeth = gear.teeth();
        internal = gear.isInternal();
        baseRadius = referenceRadius / Math.hypot(1, rackSlope / Math.cos(helix));
        tipRadius = gear.tipMm() / 2;
        formRadius = gear.formMm() / 2;
        halfAtReference = (rackThickness + (internal ? -thicker : thicker)) / Math.cos(helix) / (2 * referenceRadius);
        windAtReference = wind(referenceRadius);
    }

    /** How far the string is unwound, as an angle, where its end is at this radius. */
    double roll(double radius) {
        return Math.sqrt(Math.max(0, radius * radius / (baseRadius * baseRadius) - 1));
    }

    /** Half the tooth as an angle seen from the axis. */
    double halfTooth(double radius) {
        double inward = windAtReference - wind(radius);
        return halfAtReference + (internal ? -inward : inward);
    }

    /** The angle by which the end of the string has left its beginning, seen from the axis. */
    private double wind(double radius) {
        double roll = roll(radius);
        double sine = Math.sin(roll);
        double cosine = Math.cos(roll);
        return Math.atan2(sine - roll * cosine, cosine + roll * sine);
    }
}
