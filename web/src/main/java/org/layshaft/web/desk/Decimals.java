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

    /** With three decimals, as ratios are printed in this trade. */
    public static String three(Fraction fraction) {
        return rounded(fraction, 3).toPlainString();
    }
}
