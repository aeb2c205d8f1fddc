package org.layshaft.engine.spline;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.layshaft.engine.stated.Shown;

/** Series of standard numbers. */
final class StandardSeries {
    private StandardSeries() {}

    static boolean among(double number, double... series) {
        return Arrays.stream(series).anyMatch(member -> Math.abs(member - number) < 1e-9);
    }

    static String list(double... series) {
        return Arrays.stream(series).mapToObj(Shown::decimal).collect(Collectors.joining(", "));
    }
}
