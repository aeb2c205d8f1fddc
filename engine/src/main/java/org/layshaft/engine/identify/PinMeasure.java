package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.Shown;

/** Over two pins, between them for internal teeth; balls in helical teeth. */
public record PinMeasure(double pinMm, double measured, double allowance) implements Measurement {

    /** With an allowance for a micrometer. */
    public static PinMeasure of(double pinMm, double mm) {
        return new PinMeasure(pinMm, mm, 0.05);
    }

    @Override
    public String what() {
        return "the measure over pins of " + Shown.decimal(pinMm) + " mm";
    }

    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        return gear.overPinsMm(pinMm);
    }
}
