package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.api.Suspects.Outcome;

/** Suspects, no fault, or nothing that can be told. */
class OutcomesTest {

    /** A published noise guide and a bulletin, makers withheld: unloaded gears rattle at idle. */
    @Test
    void rattle_in_neutral_that_goes_with_the_pedal_down_is_no_fault() {
        Suspects suspects = Desk.suspects("curlew", "neutral-pedal-up: rattles; neutral-pedal-down: not rattles");
        assertEquals(Outcome.NO_FAULT, suspects.outcome());
        assertTrue(suspects.singles().get(0).normal());
        assertTrue(suspects.singles().size() > 1, "what else it may be is told all the same");
    }

    @Test
    void rattle_that_does_not_go_with_the_pedal_down_is_a_fault() {
        assertEquals(
                Outcome.SUSPECTS,
                Desk.suspects("curlew", "neutral-pedal-up: rattles; neutral-pedal-down: rattles")
                        .outcome());
    }

    @Test
    void rattle_with_something_else_beside_is_a_fault() {
        Suspects suspects = Desk.suspects(
                "curlew", "neutral-pedal-up: rattles; neutral-pedal-down: not rattles; pulling 3: growls");
        assertEquals(Outcome.SUSPECTS, suspects.outcome());
    }

    @Test
    void from_nothing_noticed_nothing_can_be_told_and_something_to_try_is_named() {
        Suspects suspects = Desk.suspects("curlew", "pulling 3: not growls");
        assertEquals(Outcome.CANNOT_BE_TOLD, suspects.outcome());
        assertTrue(suspects.singles().isEmpty());
        assertFalse(suspects.tests().isEmpty());
        assertTrue(suspects.why().contains(suspects.tests().get(0).says()), suspects.why());
    }

    @Test
    void of_a_contradiction_both_sides_are_named() {
        Suspects suspects = Desk.suspects("curlew", "pulling 3: growls; 3: not noise");
        assertEquals(Outcome.CANNOT_BE_TOLD, suspects.outcome());
        assertTrue(suspects.why().contains("'pulling in 3rd: it growls'"), suspects.why());
        assertTrue(suspects.why().contains("'in 3rd: no sign that it makes a noise'"), suspects.why());
    }

    @Test
    void what_is_noticed_hot_and_not_cold_is_no_contradiction() {
        Suspects suspects = Desk.suspects("curlew", "hot pulling 3: growls; cold pulling 3: not growls");
        assertNotEquals(Outcome.CANNOT_BE_TOLD, suspects.outcome());
    }

    @Test
    void what_no_fault_shows_cannot_be_told() {
        Suspects suspects = Desk.suspects("knot", "slips-out-of-place");
        assertEquals(Outcome.CANNOT_BE_TOLD, suspects.outcome());
        assertTrue(suspects.why().contains("Knot"), suspects.why());
    }
}
