package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/** Something measured on a gear at the bench, and what it would be on a given gear. */
public sealed interface Measurement
        permits TipDiameter, RootDiameter, SpanMeasure, PinMeasure, RolledHelix, CentreDistance {

    /** As it stands in a sentence: {@code the span over 4 teeth}. */
    String what();

    /** In mm; of a helix, in degrees. */
    double measured();

    /** How far the measured may lie from the nominal, for wear, tolerance and the hand that measured; same unit. */
    double allowance();

    /** What it comes to on this gear; none where it cannot be measured there. */
    OptionalDouble computed(InvoluteGear gear);

    /** The unit in a sentence: {@code mm}. */
    default String unit() {
        return "mm";
    }

    /** Whether what is measured is at all possible, whatever the gear. */
    default void object(Objections objections) {
        objections
                .unless(
                        measured() > 0 && measured() < Double.POSITIVE_INFINITY,
                        "Measured, %s is %s %s. It must be more than 0.",
                        what(),
                        Shown.decimal(measured()),
                        unit())
                .unless(
                        allowance() > 0,
                        "The allowance of %s is %s %s. It must be more than 0.",
                        what(),
                        Shown.decimal(allowance()),
                        unit());
    }
}
