package org.layshaft.engine.involute;

import java.util.OptionalDouble;
import org.layshaft.kb.layout.GearForm;

/**
 * One involute gear, external or internal, straight or helical.
 *
 * @param moduleMm normal module
 * @param pressureAngleDeg normal pressure angle
 * @param helixDeg helix angle at the reference cylinder, 0 for straight teeth; its hand is told elsewhere
 * @param shift profile shift coefficient, in normal modules; positive away from the gear's own axis, for internal teeth
 *     as for external ones
 * @param statedTipMm tip diameter where it is stated; otherwise it follows from the rack, without shortening
 * @throws org.layshaft.engine.stated.ImpossibleFactsException where the facts make no gear
 */
public record InvoluteGear(
        GearForm form,
        int teeth,
        double moduleMm,
        double pressureAngleDeg,
        double helixDeg,
        double shift,
        BasicRack rack,
        OptionalDouble statedTipMm) {

    public InvoluteGear {
        if (!GearFacts.hold(form, teeth, moduleMm, pressureAngleDeg, helixDeg, shift)) {
            GearFacts.refuse(form, teeth, moduleMm, pressureAngleDeg, helixDeg, shift);
        }
        if (statedTipMm.isPresent()) {
            GearFacts.checkTip(
                    form,
                    statedTipMm.getAsDouble(),
                    rootMm(form, teeth, moduleMm, helixDeg, shift, rack),
                    baseMm(teeth, moduleMm, pressureAngleDeg, helixDeg));
        }
    }

    /** A gear with its tip where the rack of ISO 53, profile A, puts it. */
    public static InvoluteGear of(
            GearForm form, int teeth, double moduleMm, double pressureAngleDeg, double helixDeg, double shift) {
        return new InvoluteGear(
                form, teeth, moduleMm, pressureAngleDeg, helixDeg, shift, BasicRack.A, OptionalDouble.empty());
    }

    /** The same gear with another shift, and so with other thickness; stands in for teeth made thinner by an allowance. */
    public InvoluteGear withShift(double otherShift) {
        return new InvoluteGear(form, teeth, moduleMm, pressureAngleDeg, helixDeg, otherShift, rack, statedTipMm);
    }

    public InvoluteGear withTipMm(double tipMm) {
        return new InvoluteGear(
                form, teeth, moduleMm, pressureAngleDeg, helixDeg, shift, rack, OptionalDouble.of(tipMm));
    }

    public boolean isInternal() {
        return form == GearForm.INTERNAL;
    }

    public double transverseModuleMm() {
        return moduleMm / Math.cos(helix());
    }

    public double transversePressureAngleDeg() {
        return Math.toDegrees(transverseAngle());
    }

    /** Helix angle at the base cylinder. */
    public double baseHelixDeg() {
        return Math.toDegrees(baseHelix());
    }

    public double referenceMm() {
        return teeth * transverseModuleMm();
    }

    public double baseMm() {
        return baseMm(teeth, moduleMm, pressureAngleDeg, helixDeg);
    }

    public double tipMm() {
        return statedTipMm.orElseGet(() -> referenceMm() + 2 * moduleMm * (outward() * rack.addendum() + shift));
    }

    public double rootMm() {
        return rootMm(form, teeth, moduleMm, helixDeg, shift, rack);
    }

    /**
     * Where the true involute begins above the root: as a rack cuts an external gear, undercut included; for an
     * internal gear, where the rack's flank ends.
     */
    public double formMm() {
        return GeneratedRoot.formMm(this);
    }

    /** Normal tooth thickness at the reference circle. */
    public double normalThicknessMm() {
        return moduleMm * (Math.PI / 2 + outward() * 2 * shift * Math.tan(normalAngle()));
    }

    /** Transverse tooth thickness, along the arc, at any diameter; none inside the base circle. */
    public OptionalDouble transverseThicknessMm(double diameterMm) {
        double cosine = baseMm() / diameterMm;
        return cosine > 1 ? OptionalDouble.empty() : OptionalDouble.of(diameterMm * halfThickness(Math.acos(cosine)));
    }

    /** Normal tooth thickness at the tip; below 0 where the flanks cross before it: the tooth is pointed. */
    public double topLandMm() {
        double tip = Math.max(tipMm(), baseMm());
        double helixThere = Math.atan(Math.tan(helix()) * tip / referenceMm());
        return tip * halfThickness(Math.acos(baseMm() / tip)) * Math.cos(helixThere);
    }

    /** The least shift at which a rack does not undercut the teeth; none for internal teeth, which no rack cuts. */
    public OptionalDouble smallestShift() {
        if (isInternal()) {
            return OptionalDouble.empty();
        }
        double sine = Math.sin(transverseAngle());
        return OptionalDouble.of(rack.straightDedendum(normalAngle()) - teeth * sine * sine / (2 * Math.cos(helix())));
    }

    public boolean isUndercut() {
        OptionalDouble least = smallestShift();
        return least.isPresent() && shift < least.getAsDouble();
    }

    /** Over how many teeth, or spaces of an internal gear, a span measurement touches near the middle of the flanks. */
    public int spanTeeth() {
        return Span.teeth(this);
    }

    /** Base tangent length over so many teeth; for straight internal teeth, over so many spaces. */
    public double spanMm(int acrossTeeth) {
        return Span.mm(this, acrossTeeth);
    }

    /** The shift of teeth like these that measure so much; the shift of this gear has no part in it. */
    public double shiftFromSpan(int acrossTeeth, double spanMm) {
        return Span.shift(this, acrossTeeth, spanMm);
    }

    /** A pin that touches near the middle of the flanks. */
    public double usualPinMm() {
        return Pins.usualMm(this);
    }

    /**
     * Over two pins, or balls in helical teeth, set in spaces as nearly opposite as they can be; between them for
     * internal teeth. None where the pin touches no involute.
     */
    public OptionalDouble overPinsMm(double pinMm) {
        return Pins.mm(this, pinMm);
    }

    /** The shift of teeth like these that measure so much; the shift of this gear has no part in it. */
    public OptionalDouble shiftFromOverPins(double pinMm, double overPinsMm) {
        return Pins.shift(this, pinMm, overPinsMm);
    }

    /** Half the tooth as an angle seen from the axis, at the circle with this transverse pressure angle. */
    double halfThickness(double angleThere) {
        double atReference = normalThicknessMm() / (moduleMm * teeth);
        return atReference + outward() * (Involute.of(transverseAngle()) - Involute.of(angleThere));
    }

    /** The radius of curvature of the involute at a diameter; 0 inside the base circle. */
    double curvatureMm(double diameterMm) {
        double base = baseMm();
        return Math.sqrt(Math.max(0, diameterMm * diameterMm - base * base)) / 2;
    }

    /** 1 where the teeth point away from the axis, -1 where they point toward it. */
    int outward() {
        return isInternal() ? -1 : 1;
    }

    double normalAngle() {
        return Math.toRadians(pressureAngleDeg);
    }

    double helix() {
        return Math.toRadians(helixDeg);
    }

    double transverseAngle() {
        return transverseAngle(pressureAngleDeg, helixDeg);
    }

    double baseHelix() {
        return Math.asin(Math.sin(helix()) * Math.cos(normalAngle()));
    }

    private static double transverseAngle(double pressureAngleDeg, double helixDeg) {
        return Math.atan(Math.tan(Math.toRadians(pressureAngleDeg)) / Math.cos(Math.toRadians(helixDeg)));
    }

    private static double baseMm(int teeth, double moduleMm, double pressureAngleDeg, double helixDeg) {
        return teeth
                * moduleMm
                / Math.cos(Math.toRadians(helixDeg))
                * Math.cos(transverseAngle(pressureAngleDeg, helixDeg));
    }

    private static double rootMm(
            GearForm form, int teeth, double moduleMm, double helixDeg, double shift, BasicRack rack) {
        int inward = form == GearForm.INTERNAL ? 1 : -1;
        return teeth * moduleMm / Math.cos(Math.toRadians(helixDeg))
                + 2 * moduleMm * (inward * rack.dedendum() + shift);
    }
}
