package org.layshaft.engine.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.kb.failure.Situation.FLOATING;
import static org.layshaft.kb.failure.Situation.IN_A_BEND;
import static org.layshaft.kb.failure.Situation.IN_GEAR_PEDAL_DOWN;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_DOWN;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_UP;
import static org.layshaft.kb.failure.Situation.OVERRUN;
import static org.layshaft.kb.failure.Situation.PULLING;
import static org.layshaft.kb.failure.Situation.ROLLING_IN_NEUTRAL;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.symptom.Concerned.Between;
import org.layshaft.kb.failure.Situation;

/** How things turn and are loaded, situation by situation, in boxes that can be followed on paper. */
class MomentTest {
    private static final Between UNDER_THIRD = new Between("output", "third");
    private static final Between FLYWHEEL = new Between("input", Concerned.ENGINE);

    private final World curlew = Books.of("curlew").sound().world();
    private final World plover = Books.of("plover").sound().world();

    @ParameterizedTest
    @CsvSource({"1, true", "2, true", "3, false", "4, true", "5, true", "R, true"})
    void the_needles_under_a_free_gear_roll_in_every_gear_but_its_own(String gear, boolean rolls) {
        assertEquals(rolls, curlew.moment(PULLING, gear).turnUnlike(UNDER_THIRD));
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, true", "3, true", "4, true", "5, false", "R, true"})
    void the_countershaft_turns_in_every_gear_and_carries_nothing_in_direct_drive(String gear, boolean carries) {
        assertTrue(curlew.moment(PULLING, gear).turns("countershaft"));
        assertEquals(carries, curlew.moment(PULLING, gear).carries("countershaft"));
    }

    @Test
    void in_neutral_the_countershaft_turns_with_the_pedal_up_and_comes_to_rest_with_it_down() {
        assertTrue(curlew.moment(NEUTRAL_PEDAL_UP, World.NEUTRAL).turns("countershaft"));
        assertFalse(curlew.moment(NEUTRAL_PEDAL_UP, World.NEUTRAL).turns("output"));
        assertFalse(curlew.moment(NEUTRAL_PEDAL_DOWN, World.NEUTRAL).turns("countershaft"));
        assertTrue(curlew.moment(ROLLING_IN_NEUTRAL, World.NEUTRAL).turns("output"));
    }

    @Test
    void the_nose_of_the_input_shaft_turns_in_the_flywheel_only_with_the_clutch_released() {
        assertFalse(curlew.moment(NEUTRAL_PEDAL_UP, World.NEUTRAL).turnUnlike(FLYWHEEL));
        assertFalse(curlew.moment(PULLING, "3").turnUnlike(FLYWHEEL));
        assertTrue(curlew.moment(NEUTRAL_PEDAL_DOWN, World.NEUTRAL).turnUnlike(FLYWHEEL));
        assertTrue(curlew.moment(IN_GEAR_PEDAL_DOWN, "1").turnUnlike(FLYWHEEL));
    }

    @ParameterizedTest
    @CsvSource({"PULLING, 1, DRIVE", "OVERRUN, 1, COAST", "PULLING, R, COAST", "OVERRUN, R, DRIVE"})
    void the_final_drive_is_loaded_on_one_flank_forward_and_on_the_other_in_reverse(
            Situation situation, String gear, Flank loaded) {
        for (String part : new String[] {"final-drive-pinion", "ring-gear"}) {
            Moment moment = plover.moment(situation, gear);
            assertTrue(moment.carriesOn(part, loaded), part);
            assertFalse(moment.carriesOn(part, loaded == Flank.DRIVE ? Flank.COAST : Flank.DRIVE), part);
        }
    }

    @Test
    void the_input_gear_of_a_long_box_is_loaded_on_the_same_flank_in_reverse() {
        assertTrue(curlew.moment(PULLING, "R").carriesOn("input-gear", Flank.DRIVE));
        assertTrue(curlew.moment(OVERRUN, "R").carriesOn("input-gear", Flank.COAST));
    }

    @Test
    void an_idler_is_loaded_on_both_flanks_whichever_way() {
        for (Situation situation : new Situation[] {PULLING, OVERRUN}) {
            assertTrue(plover.moment(situation, "R").carriesOn("reverse-idler", Flank.DRIVE));
            assertTrue(plover.moment(situation, "R").carriesOn("reverse-idler", Flank.COAST));
        }
        assertFalse(plover.moment(PULLING, "1").carriesOn("reverse-idler", Flank.DRIVE));
    }

    @Test
    void floating_loads_nothing_and_turns_everything() {
        Moment floating = curlew.moment(FLOATING, "2");
        assertTrue(floating.turns("second"));
        assertFalse(floating.carries("second"));
        assertFalse(floating.carriesOn("second", Flank.DRIVE));
    }

    @Test
    void side_gears_turn_unlike_in_a_bend_and_not_straight_ahead() {
        Between sides = new Between("left-half-shaft", "right-half-shaft");
        assertFalse(plover.moment(PULLING, "2").turnUnlike(sides));
        assertTrue(plover.moment(IN_A_BEND, "2").turnUnlike(sides));
        assertFalse(plover.moment(IN_A_BEND, "2").wheelsAreTied());
    }

    @Test
    void axles_that_are_engaged_without_a_differential_between_them_are_tied_in_a_bend() {
        World ibis = Books.of("ibis").sound().world();
        long tied = ibis.sound().gearNames().stream()
                .filter(gear -> ibis.moment(IN_A_BEND, gear).wheelsAreTied())
                .count();
        long fourWheel = ibis.sound().gearNames().stream()
                .filter(gear -> gear.contains("four-wheel"))
                .count();
        assertTrue(fourWheel > 0);
        assertEquals(fourWheel, tied);
    }
}
