package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * The angle between the marks that inked tips leave on paper and the way in which the gear was rolled along its axis:
 * the helix angle at the tips, a little more than at the reference circle.
 */
public record RolledHelix(double measured, double allowance) implements Measurement {
    private static final double HARDLY = 1e-6;

    /** With an allowance for a protractor on paper. */
    public static RolledHelix of(double deg) {
        return new RolledHelix(deg, 1.5);
    }

    /** Teeth that are straight, which the eye tells. */
    public static RolledHelix straight() {
        return new RolledHelix(0, HARDLY);
    }

    public boolean isStraight() {
        return measured == 0;
    }

    @Override
    public String what() {
        return "the helix angle at the tips";
    }

    @Override
    public String unit() {
        return "degrees";
    }

    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        double atReference = Math.tan(Math.toRadians(gear.helixDeg()));
        return OptionalDouble.of(Math.toDegrees(Math.atan(atReference * gear.tipMm() / gear.referenceMm())));
    }

    @Override
    public void object(Objections objections) {
        objections
                .unless(
                        measured >= 0 && measured <= 50,
                        "Measured, the helix angle at the tips is %s degrees. It must be from 0 to 50.",
                        Shown.decimal(measured))
                .unless(
                        allowance > 0,
                        "The allowance of the helix angle at the tips is %s degrees. It must be more than 0.",
                        Shown.decimal(allowance));
    }
}
