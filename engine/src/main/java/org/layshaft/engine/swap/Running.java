package org.layshaft.engine.swap;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.InputTorque;

/**
 * How the vehicle is driven, as far as that is stated.
 *
 * @param cruiseKmh road speed that engine speeds are asked about
 * @param shiftRpm engine speed at which one shifts up
 * @param input torque on the input of the box, and which way it turns
 */
public record Running(Optional<Fraction> cruiseKmh, Optional<Fraction> shiftRpm, Optional<InputTorque> input) {
    public static final Running NOT_STATED = new Running(Optional.empty(), Optional.empty(), Optional.empty());

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} for a speed that is not more than 0. */
    public Running {
        new Objections()
                .unlessPositive(cruiseKmh, "the cruising speed")
                .unlessPositive(shiftRpm, "the engine speed to shift at")
                .refuse();
    }

    Telling<Fraction> toldCruiseKmh() {
        return Telling.of(cruiseKmh, "the cruising speed");
    }

    Telling<Fraction> toldShiftRpm() {
        return Telling.of(shiftRpm, "the engine speed to shift at");
    }

    Telling<InputTorque> toldInput() {
        return Telling.of(input, "the torque on the input");
    }
}
