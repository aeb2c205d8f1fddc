package org.layshaft.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;

class NumberJsonTest {
    @ParameterizedTest
    @CsvSource({
        "945, 572, 945/572, 1.652098",
        "1, 1, 1, 1.000000",
        "-2, 3, -2/3, -0.666667",
        "1, 2000000, 1/2000000, 0.000001",
        "0, 5, 0, 0.000000"
    })
    void valuesHaveSixDecimals(long numerator, long denominator, String exact, String value) {
        NumberJson number = NumberJson.of(Fraction.of(numerator, denominator));

        assertEquals(exact, number.exact());
        assertEquals(value, number.value().toPlainString());
    }
}
