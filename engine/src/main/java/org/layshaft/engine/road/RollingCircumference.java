package org.layshaft.engine.road;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/**
 * How far a wheel rolls in one turn.
 *
 * @param mm whole millimetres: no tyre is known better
 * @param basis where the figure comes from, in words
 */
public record RollingCircumference(int mm, String basis) {

    /** Throws {@link ImpossibleFactsException} for a figure that no wheel has. */
    public RollingCircumference {
        new Objections()
                .unless(
                        mm >= 500 && mm <= 7000,
                        "The rolling circumference is %d mm. It must be from 500 to 7000; it is what the wheel rolls in one turn, not the diameter.",
                        mm)
                .refuse();
    }

    public static RollingCircumference stated(int mm) {
        return new RollingCircumference(mm, "as stated");
    }

    public static RollingCircumference of(TyreSize tyre, RollingConvention convention) {
        Fraction exact = tyre.freeDiameterMm().times(convention.ofDiameter());
        int mm = new BigDecimal(exact.numerator())
                .divide(new BigDecimal(exact.denominator()), 0, RoundingMode.HALF_UP)
                .intValueExact();
        return new RollingCircumference(
                mm,
                "%s, %s mm across: %s".formatted(tyre.code(), Shown.decimal(tyre.freeDiameterMm()), convention.says()));
    }

    /** By the usual convention for tyres of this build. */
    public static Telling<RollingCircumference> of(TyreSize tyre) {
        return Telling.of(
                        RollingConvention.usualFor(tyre.build()),
                        "the dynamic factor of %s, a tyre that is not radial,".formatted(tyre.code()))
                .map(convention -> of(tyre, convention));
    }

    Fraction exactMm() {
        return Fraction.of(mm);
    }
}
