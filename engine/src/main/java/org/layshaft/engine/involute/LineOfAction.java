package org.layshaft.engine.involute;

/**
 * The line of action, measured in mm from the point where it touches the pinion's base circle, in the direction in which
 * contact runs if the pinion drives. At each place the pinion's flank has that place as radius of curvature.
 *
 * @param pitchPoint where it crosses the line of centres
 * @param matesTip where the mate's tip circle crosses it
 * @param pinionsTip where the pinion's tip circle crosses it
 * @param pinionsForm where the pinion's true involute begins
 * @param matesForm where the mate's true involute begins
 */
record LineOfAction(double pitchPoint, double matesTip, double pinionsTip, double pinionsForm, double matesForm) {

    static LineOfAction of(InvolutePair pair) {
        InvoluteGear pinion = pair.pinion();
        InvoluteGear mate = pair.mate();
        double length = pair.centreMm() * Math.sin(pair.workingAngle());
        double matesTip = mate.curvatureMm(mate.tipMm());
        double matesForm = mate.curvatureMm(mate.formMm());
        return new LineOfAction(
                pinion.baseMm() / 2 * Math.tan(pair.workingAngle()),
                mate.isInternal() ? matesTip - length : length - matesTip,
                pinion.curvatureMm(pinion.tipMm()),
                pinion.curvatureMm(pinion.formMm()),
                mate.isInternal() ? matesForm - length : length - matesForm);
    }

    double start() {
        return Math.max(matesTip, pinionsForm);
    }

    double end() {
        return Math.min(pinionsTip, matesForm);
    }

    double tipToTipMm() {
        return Math.max(0, pinionsTip - matesTip);
    }

    double usableMm() {
        return Math.max(0, end() - start());
    }
}
