package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.engine.stated.Objections;
import org.layshaft.kb.layout.GearForm;

/** Between the axes of this gear and one that it runs with, whose teeth are counted and whose shift is not known. */
public record CentreDistance(int mateTeeth, GearForm mateForm, double measured, double allowance)
        implements Measurement {
    /** Outside these a mate's shift would be out of the ordinary. */
    private static final double LEAST_SHIFT = -0.5;

    private static final double MOST_SHIFT = 0.8;

    /** With an allowance for the case's bores and for backlash. */
    public static CentreDistance of(int mateTeeth, double mm) {
        return new CentreDistance(mateTeeth, GearForm.EXTERNAL, mm, 0.1);
    }

    @Override
    public String what() {
        return "the centre distance to a gear of " + mateTeeth + " teeth";
    }

    /** As near the measured as an ordinary shift of the mate brings it. */
    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        InvoluteGear mate =
                InvoluteGear.of(mateForm, mateTeeth, gear.moduleMm(), gear.pressureAngleDeg(), gear.helixDeg(), 0);
        OptionalDouble sum = InvolutePair.shiftSumAt(gear, mate, measured);
        double needed = sum.isEmpty() ? LEAST_SHIFT : shiftOfMate(gear, sum.getAsDouble());
        double ordinary = Math.min(MOST_SHIFT, Math.max(LEAST_SHIFT, needed));
        return InvolutePair.centreMmWithoutBacklash(gear, mate.withShift(ordinary));
    }

    @Override
    public void object(Objections objections) {
        Measurement.super.object(objections);
        objections.unless(mateTeeth >= 3, "The mate has %s teeth. It must have at least 3.", mateTeeth);
    }

    private double shiftOfMate(InvoluteGear gear, double sum) {
        if (gear.isInternal()) {
            return gear.shift() - sum;
        }
        return mateForm == GearForm.INTERNAL ? sum + gear.shift() : sum - gear.shift();
    }
}
