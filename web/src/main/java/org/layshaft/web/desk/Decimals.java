package org.layshaft.web.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.layshaft.engine.exact.Fraction;

/** Rounds exact numbers for showing, half up. */
public final class Decimals {
    private Decimals() {}

    public static BigDecimal rounded(Fraction fraction, int decimals) {
        return new BigDecimal(fraction.numerator())
                .divide(new BigDecimal(fraction.denominator()), decimals, RoundingMode.HALF_UP);
    }

    /** With at most so many decimals, and no zeros at the end: {@code 2400}. */
    public static String plain(Fraction fraction, int decimals) {
        BigDecimal shown = rounded(fraction, decimals);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    /** With three decimals, as ratios are printed in this trade. */
    public static String three(Fraction fraction) {
        return rounded(fraction, 3).toPlainString();
    }
}
