package org.layshaft.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.rules.fact.Fact;

/** Every rule draws its conclusion where it should and not where one fact is another. */
class RulesTest {
    private static final long[] SEEDS = {1, 20, 300, 4000};

    static Stream<RuleCase> cases() {
        return RuleCases.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_rule_concludes_what_it_should_from_what_it_should(RuleCase each) {
        RuleCheck.given(each.given())
                .concludes(each.concluded())
                .by(each.rule())
                .from(each.premises())
                .fires(each.fires().toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_rule_does_not_conclude_it_where_one_fact_is_another(RuleCase each) {
        assertFalse(each.nearMisses().isEmpty(), "there should be a near miss");
        each.nearMisses()
                .forEach(near -> RuleCheck.given(near.given())
                        .doesNotConclude(each.concluded())
                        .fires(near.fires().toArray(String[]::new)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_order_of_the_facts_does_not_matter(RuleCase each) {
        Set<Fact> inOrder = concluded(Derivation.from(each.given()));
        for (long seed : SEEDS) {
            List<Fact> shuffled = new ArrayList<>(each.given());
            Collections.shuffle(shuffled, new Random(seed));
            assertEquals(inOrder, concluded(Derivation.from(shuffled)), "shuffled with seed " + seed);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_conclusion_goes_with_any_fact_of_its_case_or_is_drawn_otherwise(RuleCase each) {
        Derivation whole = Derivation.from(each.given());
        for (Fact left : each.given()) {
            List<Fact> fewer =
                    each.given().stream().filter(fact -> !fact.equals(left)).toList();
            Derivation without = Derivation.from(fewer);
            assertNotEquals(
                    whole.stepOf(each.concluded()),
                    without.stepOf(each.concluded()),
                    () -> "concluded in the same way without " + left);
            Groundwork.requireFrom(fewer, without);
        }
    }

    private static Set<Fact> concluded(Derivation derivation) {
        return new HashSet<>(derivation.conclusions());
    }
}
