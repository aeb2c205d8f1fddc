package org.layshaft.engine.stated;

import java.math.BigDecimal;
import java.math.MathContext;
import org.layshaft.engine.exact.Fraction;

/** Exact numbers as they stand in sentences. */
public final class Shown {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    private Shown() {}

    /** As a decimal with at most six digits that count: {@code 3.05}. */
    public static String decimal(Fraction number) {
        BigDecimal shown = new BigDecimal(number.numerator()).divide(new BigDecimal(number.denominator()), SIX_DIGITS);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }
}
