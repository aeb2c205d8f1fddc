package org.layshaft.engine.identify;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand in sentences. */
final class Shown {
    private Shown() {}

    /** With three decimals at most. */
    static String number(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
