package org.layshaft.engine.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.layshaft.engine.exact.Fraction;

/** Compares exact numbers with printed ones. */
final class Figures {
    private Figures() {}

    /** Asserts that the exact number, rounded to as many places as are printed, is what is printed. */
    static void assertPrinted(String printed, Fraction exact) {
        BigDecimal wanted = new BigDecimal(printed);
        BigDecimal got = new BigDecimal(exact.numerator())
                .divide(new BigDecimal(exact.denominator()), wanted.scale(), RoundingMode.HALF_UP);
        assertEquals(wanted, got, () -> "exactly " + exact);
    }
}
