package org.layshaft.web.page;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.desk.Decimals;

/**
 * A ratio or a speed.
 *
 * @param exact as a fraction
 * @param decimal with three decimals
 * @param whole whether both say the same
 */
record NumberView(String exact, String decimal, boolean whole) {
    static NumberView of(Fraction fraction) {
        return new NumberView(
                fraction.toString(),
                Decimals.three(fraction),
                fraction.denominator().bitLength() == 1);
    }
}
