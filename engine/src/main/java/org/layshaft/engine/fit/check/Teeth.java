package org.layshaft.engine.fit.check;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.involute.BasicRack;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.layout.GearForm;

/** Asks for the facts of a gear's teeth and makes a gear to reckon with. Where one is missing it makes none: null. */
final class Teeth {
    private final Held gear;
    private final GearForm form;
    private final double count;
    private final double moduleMm;
    private final double pressureAngleDeg;
    private final double helixDeg;

    private Teeth(Held gear) {
        this.gear = gear;
        this.form = Forms.isInternal(gear) ? GearForm.INTERNAL : GearForm.EXTERNAL;
        this.count = gear.number(FactName.TEETH);
        this.moduleMm = NormalModule.moduleMm(gear);
        this.pressureAngleDeg = gear.number(FactName.PRESSURE_ANGLE_DEG);
        this.helixDeg = gear.number(FactName.HELIX_DEG);
    }

    /** With the root that its rack cuts, and with its tip. */
    static InvoluteGear whole(Held gear) {
        Teeth teeth = new Teeth(gear);
        double shift = teeth.shift();
        BasicRack rack = rack(gear);
        double tipMm = gear.number(FactName.TIP_MM);
        return teeth.gear(shift, rack, Double.isNaN(tipMm) ? OptionalDouble.empty() : OptionalDouble.of(tipMm));
    }

    /** With the root that its rack cuts; the tip plays no part. */
    static InvoluteGear rooted(Held gear) {
        Teeth teeth = new Teeth(gear);
        return teeth.gear(teeth.shift(), rack(gear), OptionalDouble.empty());
    }

    /** With its tip; the root plays no part. */
    static InvoluteGear tipped(Held gear) {
        Teeth teeth = new Teeth(gear);
        double shift = teeth.shift();
        double tipMm = gear.number(FactName.TIP_MM);
        return Double.isNaN(tipMm) ? null : teeth.gear(shift, BasicRack.A, OptionalDouble.of(tipMm));
    }

    /**
     * As thick as it is: as its span measures, or else as its profile shift makes it, less its half of the backlash.
     *
     * @param backlashMm which backlash a gear told by its shift is thinned for; along the circumference
     */
    static InvoluteGear thick(Held gear, ToDoubleFunction<Held> backlashMm) {
        Teeth teeth = new Teeth(gear);
        if (teeth.hasSpan()) {
            return teeth.gear(teeth.shiftBySpan(), BasicRack.A, OptionalDouble.empty());
        }
        double shift = gear.number(FactName.PROFILE_SHIFT);
        return teeth.gear(
                teeth.thinned(shift, backlashMm.applyAsDouble(gear) / 2), BasicRack.A, OptionalDouble.empty());
    }

    private double thinned(double shift, double transverseMm) {
        double byModules = transverseMm
                * Math.cos(Math.toRadians(helixDeg))
                / (2 * moduleMm * Math.tan(Math.toRadians(pressureAngleDeg)));
        return form == GearForm.INTERNAL ? shift + byModules : shift - byModules;
    }

    private boolean hasSpan() {
        return gear.has(FactName.SPAN_MM) || gear.has(FactName.SPAN_TEETH);
    }

    private double shift() {
        return gear.has(FactName.PROFILE_SHIFT) || !hasSpan() ? gear.number(FactName.PROFILE_SHIFT) : shiftBySpan();
    }

    private double shiftBySpan() {
        double across = gear.number(FactName.SPAN_TEETH);
        double spanMm = gear.number(FactName.SPAN_MM);
        InvoluteGear unshifted = gear(0, BasicRack.A, OptionalDouble.empty());
        return unshifted == null || Double.isNaN(across + spanMm)
                ? Double.NaN
                : unshifted.shiftFromSpan((int) across, spanMm);
    }

    private InvoluteGear gear(double shift, BasicRack rack, OptionalDouble tipMm) {
        return rack == null || Double.isNaN(count + moduleMm + pressureAngleDeg + helixDeg + shift)
                ? null
                : new InvoluteGear(form, (int) count, moduleMm, pressureAngleDeg, helixDeg, shift, rack, tipMm);
    }

    private static BasicRack rack(Held gear) {
        return switch (gear.word(FactName.RACK)) {
            case "A" -> BasicRack.A;
            case "B" -> BasicRack.B;
            case "C" -> BasicRack.C;
            case "D" -> BasicRack.D;
            default -> null;
        };
    }
}
