package org.layshaft.engine.involute;

/**
 * The tips of a pinion and of the ring around it, away from the line of centres: whether they pass each other while
 * running, and while the two are brought together along a radius.
 */
record InternalTips(InvoluteGear pinion, InvoluteGear ring, double centreMm, double workingAngle) {

    static InternalTips of(InvolutePair pair) {
        return new InternalTips(pair.pinion(), pair.mate(), pair.centreMm(), pair.workingAngle());
    }

    /** Between the tip corners where the tip circles cross; unbounded where they do not cross. */
    double runningGapMm() {
        double pinionTip = pinion.tipMm() / 2;
        double ringTip = ring.tipMm() / 2;
        double cosineAtPinion = (square(ringTip) - square(pinionTip) - square(centreMm)) / (2 * centreMm * pinionTip);
        double cosineAtRing = (square(centreMm) + square(ringTip) - square(pinionTip)) / (2 * centreMm * ringTip);
        if (Math.abs(cosineAtPinion) > 1 || Math.abs(cosineAtRing) > 1) {
            return Double.POSITIVE_INFINITY;
        }
        double pinionTurns = Math.acos(cosineAtPinion) + sinceContact(pinion);
        double ringTurns = Math.acos(cosineAtRing) + sinceContact(ring);
        return ringTip * (pinionTurns * pinion.teeth() / ring.teeth() - ringTurns);
    }

    /** The least, over the places of the pinion's tooth, between the tip corners while they pass each other. */
    double radialEntryGapMm() {
        double tipsRatio = Math.cos(tipAngle(pinion)) / Math.cos(tipAngle(ring));
        double teethRatio = (double) pinion.teeth() / ring.teeth();
        double pinionSine = Math.sqrt((1 - square(tipsRatio)) / (1 - square(teethRatio)));
        double ringSine = Math.sqrt((1 / square(tipsRatio) - 1) / (1 / square(teethRatio) - 1));
        if (!(pinionSine <= 1 && ringSine <= 1)) {
            return Double.POSITIVE_INFINITY;
        }
        double pinionTurns = Math.asin(pinionSine) + sinceContact(pinion);
        double ringTurns = Math.asin(ringSine) + sinceContact(ring);
        return ring.tipMm() / 2 * (pinionTurns * teethRatio - ringTurns);
    }

    /** The angle, seen from the gear's axis, between its tip corner and the pitch point while they are in contact. */
    private double sinceContact(InvoluteGear gear) {
        return Involute.of(tipAngle(gear)) - Involute.of(workingAngle);
    }

    private static double tipAngle(InvoluteGear gear) {
        return Math.acos(Math.min(1, gear.baseMm() / gear.tipMm()));
    }

    private static double square(double number) {
        return number * number;
    }
}
