package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;

/** Across the tips; inside them for internal teeth. */
public record TipDiameter(double measured, double allowance) implements Measurement {

    /** With an allowance for tips turned a little short or long, and for chamfers. */
    public static TipDiameter of(double mm, double roughModuleMm) {
        return new TipDiameter(mm, 0.05 + 0.12 * roughModuleMm);
    }

    @Override
    public String what() {
        return "the tip diameter";
    }

    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        return OptionalDouble.of(gear.tipMm());
    }
}
