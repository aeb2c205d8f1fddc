package org.layshaft.engine.involute;

/** Base tangent length: flat jaws over several teeth, square to the base cylinder's helix. */
final class Span {
    private Span() {}

    static double mm(InvoluteGear gear, int acrossTeeth) {
        return gear.moduleMm()
                * Math.cos(gear.normalAngle())
                * (unshifted(gear, acrossTeeth) + shifted(gear, gear.shift()));
    }

    static double shift(InvoluteGear gear, int acrossTeeth, double spanMm) {
        double inModules = spanMm / (gear.moduleMm() * Math.cos(gear.normalAngle()));
        return (inModules - unshifted(gear, acrossTeeth)) / (2 * Math.tan(gear.normalAngle()));
    }

    /** That number which touches nearest the reference circle, moved with the shift; the jaws must find true involute. */
    static int teeth(InvoluteGear gear) {
        double touched = gear.referenceMm() + 2 * gear.shift() * gear.moduleMm();
        double wanted = 2 * gear.curvatureMm(touched) / Math.cos(gear.baseHelix());
        double inModules = wanted / (gear.moduleMm() * Math.cos(gear.normalAngle()));
        double exact = (inModules - unshifted(gear, 0) - shifted(gear, gear.shift())) / Math.PI;
        int most = Math.max(2, (int) Math.floor(gear.teeth() / 2.0));
        return (int) Math.min(most, Math.max(2, Math.round(exact)));
    }

    private static double unshifted(InvoluteGear gear, int acrossTeeth) {
        return Math.PI * (acrossTeeth - 0.5) + gear.teeth() * Involute.of(gear.transverseAngle());
    }

    private static double shifted(InvoluteGear gear, double shift) {
        return 2 * shift * Math.tan(gear.normalAngle());
    }
}
