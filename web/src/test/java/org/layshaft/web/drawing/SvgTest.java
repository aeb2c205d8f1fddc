package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.001, 0", "1.5, 1.5", "1.05, 1.05", "-2.346, -2.35", "1234567.891, 1234567.89", "0.999, 1"})
    void printsNumbersShort(double number, String printed) {
        assertEquals(printed, Svg.number(number));
    }

    @Test
    void escapesTextAndAttributes() {
        Svg svg = new Svg()
                .open("g", "class", "a\"b", "href", null)
                .say("title", "<&>'\u0007")
                .close();
        assertEquals("<g class=\"a&quot;b\"><title>&lt;&amp;&gt;&#39;\uFFFD</title></g>\n", svg.toString());
    }
}
