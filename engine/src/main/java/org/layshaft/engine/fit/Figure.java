package org.layshaft.engine.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName.Unit;

/**
 * One of the two numbers, or words, that a check looks at.
 *
 * @param of what it is a figure of, in words: {@code the third gear SM-1203}, {@code the limit}
 * @param number NaN where it is a word
 * @param word empty where it is a number
 */
public record Figure(String of, double number, String word, Unit unit, boolean measured) {
    private static final int DECIMALS = 4;

    public static Figure of(String what, double number, Unit unit) {
        return new Figure(what, number, "", unit, false);
    }

    public static Figure of(String what, String word) {
        return new Figure(what, Double.NaN, word, Unit.RATIO, false);
    }

    public static Figure of(String what, Fact fact) {
        return new Figure(
                what,
                fact.number(),
                Double.isNaN(fact.number()) ? fact.text() : "",
                fact.name().unit().orElse(Unit.RATIO),
                fact.measured());
    }

    /** With its unit, to four decimals: {@code 2.5 mm}. */
    public String shown() {
        return Double.isNaN(number) ? word : decimal(number) + unit.suffix();
    }

    static String decimal(double number) {
        if (Double.isInfinite(number)) {
            return "beyond all bounds";
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
