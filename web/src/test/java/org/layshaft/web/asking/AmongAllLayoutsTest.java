package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.web.Demo;

/** Many layouts do not keep a question about one of them from being understood. */
class AmongAllLayoutsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            curlew | which gears still work if the 3-4 fork is bent | gears-left [3-4-fork bent]
            curlew | how low is first gear                          | ratio [] 1
            curlew | wich gears stil wrok if the thrid gear is striped | gears-left [third stripped]
            heron  | which gears still work if the range fork is bent | gears-left [range-fork bent]
            knot   | which gears still work if the left half-shaft is broken | gears-left [left-half-shaft broken]
            """)
    void meansWhatItShould(String layout, String words, String means) {
        assertEquals(means, Meant.by(Demo.desk().understand(Optional.of(Demo.layout(layout)), words)));
    }

    @Test
    void whatIsElsewhereIsToldShortly() {
        Understanding.NotUnderstood not = assertInstanceOf(
                Understanding.NotUnderstood.class,
                Demo.desk().understand(Optional.of(Demo.layout("plover")), "what if the interlock pin is missing"));
        assertEquals("Plover has no interlock pin; Avocet, Crane, Curlew, Egret and 7 others have.", not.says());
    }
}
