package org.layshaft.engine.stated;

import java.math.BigDecimal;
import java.math.MathContext;
import org.layshaft.engine.exact.Fraction;

/** Numbers as they stand in sentences. */
public final class Shown {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    /** What is left over from adding up fractions of a unit. */
    private static final double NOTHING = 1e-9;

    private Shown() {}

    /** A measured or computed number, with at most six digits that count; what is no number as Java writes it. */
    public static String decimal(double number) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        BigDecimal shown = new BigDecimal(number).round(SIX_DIGITS);
        return Math.abs(number) < NOTHING ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    /** As a decimal with at most six digits that count: {@code 3.05}. */
    public static String decimal(Fraction number) {
        BigDecimal shown = new BigDecimal(number.numerator()).divide(new BigDecimal(number.denominator()), SIX_DIGITS);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }
}
