package org.layshaft.web.desk;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/**
 * Speed and torque of the input, where told.
 *
 * @param rpm turns a minute
 * @param nm N·m
 */
public record InputRunning(Optional<Fraction> rpm, Optional<Fraction> nm) {

    /** Throws {@link BadInputException} where one of them cannot be read, with all that is wrong. */
    public static InputRunning of(Optional<String> rpm, Optional<String> nm) {
        WrittenNumbers numbers = new WrittenNumbers();
        InputRunning running = new InputRunning(
                numbers.positive("speed of the input in rpm", told(rpm), "rpm=2400"),
                numbers.positive("torque on the input in N·m", told(nm), "nm=180"));
        numbers.refuse();
        return running;
    }

    /** A field of a form that was left empty tells nothing. */
    private static Optional<String> told(Optional<String> written) {
        return written.filter(text -> !text.isBlank());
    }
}
