package org.layshaft.engine.spline;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Numbers as they stand in designations and sentences. */
final class Numbers {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    private Numbers() {}

    static String shown(double number) {
        BigDecimal rounded = new BigDecimal(number).round(SIX_DIGITS);
        return Math.abs(number) < 1e-9 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static boolean among(double number, double... series) {
        return Arrays.stream(series).anyMatch(member -> Math.abs(member - number) < 1e-9);
    }

    static String list(double... series) {
        return Arrays.stream(series).mapToObj(Numbers::shown).collect(Collectors.joining(", "));
    }
}
