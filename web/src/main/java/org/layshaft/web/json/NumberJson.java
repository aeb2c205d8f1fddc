package org.layshaft.web.json;

import java.math.BigDecimal;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.desk.Decimals;

/**
 * A ratio or a speed.
 *
 * @param exact a reduced fraction, or a whole number: {@code 945/572}
 * @param value the same, rounded half up to six decimals
 */
public record NumberJson(String exact, BigDecimal value) {
    private static final int DECIMALS = 6;

    static NumberJson of(Fraction fraction) {
        return new NumberJson(fraction.toString(), Decimals.rounded(fraction, DECIMALS));
    }
}
