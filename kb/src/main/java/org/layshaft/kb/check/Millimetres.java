package org.layshaft.kb.check;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand in findings. */
final class Millimetres {
    private Millimetres() {}

    /** As typed, without a closing .0: {@code 2.5}, {@code 3}. */
    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** To a hundredth: {@code 88.75}. */
    static String toHundredth(double number) {
        return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
