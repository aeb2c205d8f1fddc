package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;

class SetAgainTest {
    private static final Layout GODWIT = Boxes.the("godwit");

    /** S035, a published matrix of a six-speed transaxle with two output shafts: what is replaced, what is shimmed again. */
    @ParameterizedTest
    @CsvSource({
        "box-case, input lower-output upper-output differential",
        "clutch-housing, input lower-output upper-output differential",
        "input, input",
        "lower-output, lower-output",
        "upper-output, upper-output",
        "differential, differential",
        "differential-carrier-bearings, differential",
        "third, ''"
    })
    void after_S035(String replaced, String again) {
        Set<String> expected = again.isEmpty() ? Set.of() : Set.of(again.split(" "));
        assertEquals(expected, SetAgain.after(GODWIT, Set.of(replaced)).endways());
    }

    @Test
    void a_bevel_pair_is_set_again_with_either_gear_or_what_carries_them() {
        Layout knot = Boxes.the("knot");
        Set<String> pair = Set.of("drive-pinion", "ring-gear");
        assertEquals(pair, SetAgain.after(knot, Set.of("ring-gear")).bevels());
        assertEquals(pair, SetAgain.after(knot, Set.of("differential")).bevels());
        assertEquals(Set.of(), SetAgain.after(knot, Set.of("left-half-shaft")).bevels());
        assertEquals(Set.of(), SetAgain.after(GODWIT, Set.of("box-case")).bevels());
    }
}
