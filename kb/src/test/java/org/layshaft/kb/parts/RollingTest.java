package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rolling;
import org.layshaft.kb.testing.Layouts;

/** What rolls in a bearing is read as typed, and nothing is supplied that is not. */
class RollingTest {
    private static final Layout BOX = Layouts.built("""
            "shafts": { "input": { "along": [
              { "bearing": "whole", "rolling": { "count": 9, "element_mm": 9.50, "pitch_mm": 48, "contact_deg": 15 } },
              { "gear": "free-gear", "teeth": 20, "free": true },
              { "bearing": "counted", "rolling": { "count": 13 } },
              { "bearing": "plain" }
            ] } }
            """);

    @Test
    void allThatIsTypedIsRead() {
        assertEquals(
                Optional.of(new Rolling(OptionalInt.of(9), number("9.50"), number("48"), number("15"))),
                rollingOf("whole"));
    }

    @Test
    void whatIsNotTypedIsEmpty() {
        assertEquals(
                Optional.of(new Rolling(OptionalInt.of(13), Optional.empty(), Optional.empty(), Optional.empty())),
                rollingOf("counted"));
        assertEquals(Optional.empty(), rollingOf("plain"));
        assertEquals(Optional.empty(), rollingOf("free-gear-needles"));
    }

    private static Optional<Rolling> rollingOf(String bearing) {
        return BOX.the(Bearing.class, bearing).rolling();
    }

    private static Optional<BigDecimal> number(String typed) {
        return Optional.of(new BigDecimal(typed));
    }
}
