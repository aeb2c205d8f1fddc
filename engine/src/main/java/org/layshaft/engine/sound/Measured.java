package org.layshaft.engine.sound;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * A frequency as it was measured.
 *
 * @param hz more than 0
 * @param toleranceHz how far from it something may lie and still fit; not less than 0
 */
public record Measured(Fraction hz, Fraction toleranceHz) {
    private static final Fraction HUNDRED = Fraction.of(100);

    /** Throws {@link ImpossibleFactsException} with all that cannot be about the two. */
    public Measured {
        new Objections()
                .unless(hz.signum() > 0, "The frequency is %s Hz. It must be more than 0.", Shown.decimal(hz))
                .unless(
                        toleranceHz.signum() >= 0,
                        "The tolerance is %s Hz. It must not be less than 0.",
                        Shown.decimal(toleranceHz))
                .refuse();
    }

    public static Measured withinPercent(Fraction hz, Fraction percent) {
        return new Measured(hz, hz.times(percent).over(HUNDRED));
    }

    boolean isFittedBy(Fraction otherHz) {
        return otherHz.minus(hz).absolute().compareTo(toleranceHz) <= 0;
    }

    /** How far off a frequency lies, in percent of what was measured; less than 0 below it. */
    Fraction offPercent(Fraction otherHz) {
        return otherHz.minus(hz).over(hz).times(HUNDRED);
    }
}
