package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;

/**
 * The pair that drives a speedometer.
 *
 * @param drivingTeeth of the gear on the shaft, of a worm its starts
 * @param drivenTeeth of the gear on the cable or sender
 */
public record SpeedGears(int drivingTeeth, int drivenTeeth) {

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} where either has no teeth. */
    public SpeedGears {
        new Objections()
                .unless(
                        drivingTeeth > 0,
                        "The driving gear of the speedometer has %d teeth. It must have at least 1.",
                        drivingTeeth)
                .unless(
                        drivenTeeth > 0,
                        "The driven gear of the speedometer has %d teeth. It must have at least 1.",
                        drivenTeeth)
                .refuse();
    }

    /** Turns of the cable for one turn of the shaft. */
    public Fraction ratio() {
        return Fraction.of(drivingTeeth, drivenTeeth);
    }
}
