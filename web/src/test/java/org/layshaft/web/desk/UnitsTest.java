package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;

class UnitsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            the case: 96 mm                          | the case: 3.7795 in
            misses by -0.25 mm.                      | misses by -0.0098 in.
            must be from 95.97 to 96.03 mm           | must be from 3.7783 to 3.7807 in
            25.4 mm and 12.7 mm                      | 1.0000 in and 0.5000 in
            module 2.5 mm, tip 88.4 mm               | module 2.5 mm, tip 3.4803 in
            2500 rpm at 90 km/h                      | 2500 rpm at 55.9 mph
            34 teeth, helix 22°                      | 34 teeth, helix 22°
            """)
    void lengthsAndSpeedsInSentences(String metric, String inch) {
        assertEquals(inch, Units.INCH.words(metric));
        assertEquals(metric, Units.METRIC.words(metric));
    }

    /** 100 lb·ft are 135.6 N·m, and 62.137 mph 100 km/h, in any table of conversions. */
    @Test
    void torquesAndSpeeds() {
        assertEquals("100", Units.INCH.torque(Fraction.of(1356, 10)));
        assertEquals("62.137", Units.INCH.speed(Fraction.of(100), 3));
        assertEquals("100", Units.METRIC.torque(Fraction.of(100)));
    }

    @Test
    void whatIsNoUnitIsRefused() {
        assertEquals(Units.INCH, Units.of(Optional.of("inch")));
        assertEquals(Units.METRIC, Units.of(Optional.empty()));
        assertThrows(BadInputException.class, () -> Units.of(Optional.of("cubit")));
    }
}
