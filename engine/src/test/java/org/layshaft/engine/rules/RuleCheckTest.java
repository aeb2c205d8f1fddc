package org.layshaft.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Ties.FixedOn;
import org.layshaft.engine.rules.fact.Ties.Tie;

/** A check that fails says what was there instead. */
class RuleCheckTest {
    private static final FixedOn FIXED = new FixedOn("seat", "gear", "shaft");
    private static final FixedOn OTHER = new FixedOn("other", "rim", "sleeve");
    private static final Tie TIE = new Tie("seat", "gear", "shaft", Fraction.ONE);
    private static final Tie BACK = new Tie("seat", "shaft", "gear", Fraction.ONE);

    private final RuleCheck check = RuleCheck.given(FIXED);

    @Test
    void a_check_that_holds_says_nothing() {
        check.concludes(TIE)
                .by("ties/fixed")
                .from(FIXED)
                .doesNotConclude(new Tie("seat", "gear", "sleeve", Fraction.ONE))
                .fires("ties/fixed");
    }

    @Test
    void what_was_not_concluded_is_told_with_what_was() {
        Tie twice = new Tie("seat", "gear", "shaft", Fraction.of(2));
        String says = messageOf(() -> check.concludes(twice));
        assertTrue(says.startsWith(twice + " was not concluded. Concluded were: "), says);
        assertTrue(says.contains(TIE + " by ties/fixed") && says.contains(BACK + " by ties/fixed"), says);
        assertEquals(
                twice + " was not concluded. Nothing was concluded.",
                messageOf(() -> RuleCheck.given().concludes(twice)));
    }

    @Test
    void a_fact_that_was_given_is_no_conclusion() {
        assertEquals(FIXED + " was given, not concluded.", messageOf(() -> check.concludes(FIXED)));
    }

    @Test
    void the_rule_that_concluded_it_is_told() {
        assertEquals(
                TIE + " should have been concluded by ties/mesh; it was by ties/fixed.",
                messageOf(() -> check.concludes(TIE).by("ties/mesh")));
    }

    @Test
    void the_premises_that_it_rests_on_are_told() {
        RuleCheck both = RuleCheck.given(FIXED, OTHER);
        assertEquals(
                "%s should rest on [%s]; it rests on [%s].".formatted(TIE, OTHER, FIXED),
                messageOf(() -> both.concludes(TIE).from(OTHER)));
        assertEquals(
                "%s should rest on []; it rests on [%s].".formatted(TIE, FIXED),
                messageOf(() -> both.concludes(TIE).from()));
    }

    @Test
    void a_premise_that_never_was_is_told_as_such() {
        assertEquals(
                OTHER + " is expected as a premise, but was neither given nor concluded.",
                messageOf(() -> check.concludes(TIE).from(OTHER)));
    }

    @Test
    void what_should_not_have_been_concluded_is_told_with_how_it_was() {
        assertEquals(
                "%s was concluded, by ties/fixed from [%s].".formatted(TIE, FIXED),
                messageOf(() -> check.doesNotConclude(TIE)));
    }

    @Test
    void rules_that_should_have_fired_are_told_with_those_that_did() {
        String says = messageOf(() -> check.fires("ties/mesh", "ties/fixed"));
        assertTrue(
                says.startsWith("[ties/fixed, ties/mesh] should have fired, and nothing else; it was [ties/fixed]."),
                says);
        assertTrue(messageOf(check::fires).startsWith("[] should have fired"));
    }

    private static String messageOf(Executable check) {
        return assertThrows(AssertionError.class, check).getMessage();
    }
}
