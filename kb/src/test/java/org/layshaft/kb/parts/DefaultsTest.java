package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.testing.Layouts;

/** What the format supplies where little is typed. */
class DefaultsTest {

    @ParameterizedTest
    @CsvSource({
        "3-4, 3-4",
        "5-R, 5-R",
        "hi-lo, hi-lo",
        "cluster-third, cluster third",
        "final-drive-pinion, final drive pinion",
        "-, -"
    })
    void the_hyphen_stays_between_short_words(String id, String words) {
        assertEquals(words, DefaultNames.words(id));
    }

    @ParameterizedTest
    @CsvSource({
        "none, '', ''",
        "pins, '', 'interlock-plunger-1 interlock-plunger-2 interlock-pin'",
        "pins, '\"4\",', 'interlock-plunger-1 interlock-plunger-2 interlock-plunger-3 interlock-pin-1 interlock-pin-2'",
        "plate, '', interlock-plate",
        "collar, '', interlock-collar"
    })
    void an_interlock_has_its_pieces(String form, String fourthRail, String pieces) {
        Layout layout = layout(
                "",
                "\"selector\": { \"rails\": [\"1\", \"2\", %s \"3\"], \"interlock\": \"%s\" }"
                        .formatted(fourthRail, form));
        assertEquals(pieces, ids(layout, "interlock-"));
    }

    @Test
    void each_sleeve_has_a_rail_and_several_rails_have_pins() {
        Layout layout = layout("{ \"sleeve\": \"1-2\" }, { \"sleeve\": \"3\" }", "\"name\": \"Box\"");
        assertEquals("1-2-rail 3-rail", ids(layout, ".-rail"));
        assertEquals("interlock-plunger", ids(layout, "interlock-"));
    }

    @Test
    void a_clutch_is_there_unless_it_is_said_not_to_be() {
        assertEquals("clutch", ids(layout("", "\"name\": \"Box\""), "^clutch$"));
        assertEquals("", ids(layout("", "\"clutch\": false"), "^clutch$"));
        assertEquals("clutch", ids(layout("", "\"clutch\": true"), "^clutch$"));
    }

    @Test
    void gears_are_free_on_a_held_shaft_and_fixed_on_others() {
        String gears = "{ \"gear\": \"a\", \"teeth\": 20 }, { \"gear\": \"b\", \"teeth\": 20, \"free\": %s }";
        assertEquals("a-needles", ids(layout(gears.formatted(false), "\"name\": \"x\"", true), "-needles"));
        assertEquals("b-needles", ids(layout(gears.formatted(true), "\"name\": \"x\"", false), "-needles"));
    }

    @Test
    void a_gear_between_two_sleeves_has_clutching_teeth_on_both_faces() {
        Layout layout = layout(
                "{ \"sleeve\": \"1\" }, { \"gear\": \"low\", \"teeth\": 20, \"free\": true }, { \"sleeve\": \"2\" }",
                "\"name\": \"x\"");
        assertEquals("low-clutching-teeth low-clutching-teeth-2", ids(layout, "-clutching-teeth"));
        assertEquals("low-ring low-ring-2", ids(layout, "-ring"));
    }

    @Test
    void a_differential_has_ring_gear_and_two_half_shafts() {
        Layout layout = layout("", "\"differential\": { \"ring_gear\": { \"teeth\": 60 } }");
        assertEquals(List.of("left-half-shaft", "right-half-shaft"), layout.outputs());
        assertEquals("ring-gear left-half-shaft right-half-shaft", ids(layout, "ring-gear|half-shaft"));
    }

    private static Layout layout(String along, String more) {
        return layout(along, more, false);
    }

    private static Layout layout(String along, String more, boolean held) {
        return Layouts.built("\"id\": \"box\", \"shafts\": { \"input\": { \"held\": %s, \"along\": [%s] } }, %s"
                .formatted(held, along, more));
    }

    private static String ids(Layout layout, String like) {
        List<String> ids = layout.parts().values().stream()
                .map(Part::id)
                .filter(id -> id.matches(".*(" + like + ").*"))
                .toList();
        return String.join(" ", ids);
    }
}
