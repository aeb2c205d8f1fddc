package org.layshaft.engine.involute;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two gears in mesh on parallel axes at a centre distance. At most one is internal; either may be the first.
 *
 * @param centreMm between the axes
 * @throws org.layshaft.engine.stated.ImpossibleFactsException where the two can never mesh, or where the axes stand so
 *     near each other that no tangent passes between the base circles; {@link #at} answers without a throw there
 */
public record InvolutePair(InvoluteGear first, InvoluteGear second, double centreMm) {

    public InvolutePair {
        Matching.check(first, second);
        if (!(centreMm >= Matching.leastCentreMm(first, second))) {
            Matching.refuseCentre(first, second, centreMm);
        }
    }

    /** The pair at this centre distance; none where the axes stand too near each other for any involute contact. */
    public static Optional<InvolutePair> at(InvoluteGear first, InvoluteGear second, double centreMm) {
        Matching.check(first, second);
        return centreMm >= Matching.leastCentreMm(first, second)
                ? Optional.of(new InvolutePair(first, second, centreMm))
                : Optional.empty();
    }

    /** The distance at which they run without backlash; none where their teeth are too thin for any. */
    public static OptionalDouble centreMmWithoutBacklash(InvoluteGear first, InvoluteGear second) {
        Matching.check(first, second);
        double angle = first.transverseAngle();
        double involute = Involute.of(angle)
                + 2 * Math.tan(first.normalAngle()) * shiftSum(first, second) / Matching.teeth(first, second);
        return involute < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Matching.leastCentreMm(first, second) / Math.cos(Involute.angleOf(involute)));
    }

    /**
     * What the shifts must come to for no backlash at this distance: their sum, for an internal pair that of the ring
     * less that of the pinion. The shifts that the gears have now play no part. None where the axes stand too near.
     */
    public static OptionalDouble shiftSumAt(InvoluteGear first, InvoluteGear second, double centreMm) {
        Matching.check(first, second);
        double cosine = Matching.leastCentreMm(first, second) / centreMm;
        if (!(cosine > 0 && cosine <= 1)) {
            return OptionalDouble.empty();
        }
        double more = Involute.of(Math.acos(cosine)) - Involute.of(first.transverseAngle());
        return OptionalDouble.of(more * Matching.teeth(first, second) / (2 * Math.tan(first.normalAngle())));
    }

    /** The sum of the shifts; for an internal pair that of the ring less that of the pinion. */
    public static double shiftSum(InvoluteGear first, InvoluteGear second) {
        return (second.isInternal() ? -1 : 1) * first.shift() + (first.isInternal() ? -1 : 1) * second.shift();
    }

    public boolean isInternal() {
        return first.isInternal() || second.isInternal();
    }

    public double workingPressureAngleDeg() {
        return Math.toDegrees(workingAngle());
    }

    public double workingMmOfFirst() {
        return workingMm(first);
    }

    public double workingMmOfSecond() {
        return workingMm(second);
    }

    /** How much shorter the tips must be, each in radius, to keep the rack's clearance: ISO 21771's tip alteration. */
    public double tipShorteningMm() {
        if (isInternal()) {
            return 0;
        }
        double reference = (first.referenceMm() + second.referenceMm()) / 2;
        return shiftSum(first, second) * first.moduleMm() - (centreMm - reference);
    }

    /** The same pair with both tips, where they are not stated, shortened to keep the rack's clearance. */
    public InvolutePair withShortenedTips() {
        double shorterMm = 2 * tipShorteningMm();
        return new InvolutePair(shortened(first, shorterMm), shortened(second, shorterMm), centreMm);
    }

    /** Along the line of action from tip circle to tip circle; 0 where they do not reach each other. */
    public double pathOfContactMm() {
        return line().tipToTipMm();
    }

    /** The path of contact over the transverse base pitch, both flanks true from root to tip. */
    public double contactRatioByTips() {
        return pathOfContactMm() / transverseBasePitchMm();
    }

    /** The transverse contact ratio, of the true involute that there is above each root, undercut included. */
    public double transverseContactRatio() {
        return line().usableMm() / transverseBasePitchMm();
    }

    public double overlapRatio(double faceMm) {
        return faceMm * Math.sin(first.helix()) / (Math.PI * first.moduleMm());
    }

    public double totalContactRatio(double faceMm) {
        return transverseContactRatio() + overlapRatio(faceMm);
    }

    /** From the first gear's tip to the second's root; below 0 where they run into each other. */
    public double tipClearanceFirstMm() {
        return clearanceMm(first, second);
    }

    /** From the second gear's tip to the first's root; below 0 where they run into each other. */
    public double tipClearanceSecondMm() {
        return clearanceMm(second, first);
    }

    /** Along the arc of the working pitch circles, transverse; below 0 where the flanks overlap. */
    public double circumferentialBacklashMm() {
        double working = workingAngle();
        double pitch = Math.PI * workingMm(first) / first.teeth();
        return pitch
                - workingMm(first) * first.halfThickness(working)
                - workingMm(second) * second.halfThickness(working);
    }

    /** The shortest way between the flanks, as a feeler gauge finds it; below 0 where they overlap. */
    public double normalBacklashMm() {
        return circumferentialBacklashMm() * Math.cos(workingAngle()) * Math.cos(first.baseHelix());
    }

    /** Everything that keeps these teeth from running free at this distance; empty where nothing does. */
    public List<Interference> interference() {
        return Interferences.of(this);
    }

    /**
     * Of an internal pair, how far apart the tips pass when pinion and ring are brought together along a radius; below
     * 0 the pinion must go in along the axis. None for an external pair.
     */
    public OptionalDouble radialEntryGapMm() {
        return isInternal() ? OptionalDouble.of(InternalTips.of(this).radialEntryGapMm()) : OptionalDouble.empty();
    }

    /** How the flanks slide where contact begins if the first gear drives: nearest its root, the second's tip. */
    public Sliding slidingAtStart() {
        return Sliding.at(this, pinion() == first ? line().start() : line().end());
    }

    /** How the flanks slide where contact ends if the first gear drives: its tip, nearest the second's root. */
    public Sliding slidingAtEnd() {
        return Sliding.at(this, pinion() == first ? line().end() : line().start());
    }

    /** The external one with fewer teeth; in an internal pair the external one. */
    InvoluteGear pinion() {
        if (isInternal()) {
            return first.isInternal() ? second : first;
        }
        return first.teeth() <= second.teeth() ? first : second;
    }

    InvoluteGear mate() {
        return pinion() == first ? second : first;
    }

    double workingAngle() {
        return Math.acos(Math.min(1, Matching.leastCentreMm(first, second) / centreMm));
    }

    double workingMm(InvoluteGear gear) {
        return 2 * centreMm * gear.teeth() / Matching.teeth(first, second);
    }

    LineOfAction line() {
        return LineOfAction.of(this);
    }

    private double transverseBasePitchMm() {
        return Math.PI * first.baseMm() / first.teeth();
    }

    private double clearanceMm(InvoluteGear tip, InvoluteGear root) {
        if (root.isInternal()) {
            return root.rootMm() / 2 - centreMm - tip.tipMm() / 2;
        }
        double between = tip.isInternal() ? tip.tipMm() / 2 - centreMm : centreMm - tip.tipMm() / 2;
        return between - root.rootMm() / 2;
    }

    private static InvoluteGear shortened(InvoluteGear gear, double shorterMm) {
        return gear.statedTipMm().isPresent() || gear.isInternal() ? gear : gear.withTipMm(gear.tipMm() - shorterMm);
    }
}
