package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;

/** Across the bottoms of the spaces. */
public record RootDiameter(double measured, double allowance) implements Measurement {

    /** With an allowance for the depth of different tools. */
    public static RootDiameter of(double mm, double roughModuleMm) {
        return new RootDiameter(mm, 0.1 + 0.3 * roughModuleMm);
    }

    @Override
    public String what() {
        return "the root diameter";
    }

    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        return OptionalDouble.of(gear.rootMm());
    }
}
