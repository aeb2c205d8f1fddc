package org.layshaft.engine.rules;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Fact;

/** What the built-in rules make of some facts, held against what they should. */
final class RuleCheck {
    private final List<Fact> given;
    private final Derivation derivation;

    private RuleCheck(List<Fact> given) {
        this.given = given;
        this.derivation = Derivation.from(given);
    }

    static RuleCheck given(Fact... facts) {
        return given(List.of(facts));
    }

    static RuleCheck given(List<Fact> facts) {
        return new RuleCheck(List.copyOf(facts));
    }

    /** Fails unless the fact was concluded; being given does not count. */
    Conclusion concludes(Fact fact) {
        Derivation.Step step = derivation
                .stepOf(fact)
                .orElseGet(() -> fail(
                        given.contains(fact)
                                ? "%s was given, not concluded.".formatted(fact)
                                : "%s was not concluded. %s".formatted(fact, whatWas())));
        return new Conclusion(fact, step);
    }

    RuleCheck doesNotConclude(Fact fact) {
        derivation
                .stepOf(fact)
                .ifPresent(
                        step -> fail("%s was concluded, by %s from %s.".formatted(fact, step.rule(), step.premises())));
        return this;
    }

    /** Fails unless exactly these rules drew conclusions. */
    RuleCheck fires(String... rules) {
        List<String> expected = Stream.of(rules).sorted().toList();
        if (!expected.equals(derivation.rulesThatFired())) {
            fail("%s should have fired, and nothing else; it was %s. %s"
                    .formatted(expected, derivation.rulesThatFired(), whatWas()));
        }
        return this;
    }

    Derivation derivation() {
        return derivation;
    }

    private String whatWas() {
        String concluded = derivation.conclusions().stream()
                .map(fact -> "%s by %s"
                        .formatted(fact, derivation.stepOf(fact).orElseThrow().rule()))
                .collect(Collectors.joining("; "));
        return concluded.isEmpty() ? "Nothing was concluded." : "Concluded were: %s.".formatted(concluded);
    }

    /** Something that was concluded, held against how it should have been. */
    final class Conclusion {
        private final Fact fact;
        private final Derivation.Step step;

        private Conclusion(Fact fact, Derivation.Step step) {
            this.fact = fact;
            this.step = step;
        }

        Conclusion by(String rule) {
            if (!step.rule().equals(rule)) {
                fail("%s should have been concluded by %s; it was by %s.".formatted(fact, rule, step.rule()));
            }
            return this;
        }

        /** Fails unless these were the premises, in the order of the rule's conditions. */
        RuleCheck from(Fact... premises) {
            return from(List.of(premises));
        }

        RuleCheck from(List<Fact> premises) {
            premises.stream()
                    .filter(premise -> !given.contains(premise)
                            && derivation.stepOf(premise).isEmpty())
                    .forEach(premise -> fail(
                            "%s is expected as a premise, but was neither given nor concluded.".formatted(premise)));
            if (!step.premises().equals(premises)) {
                fail("%s should rest on %s; it rests on %s.".formatted(fact, premises, step.premises()));
            }
            return RuleCheck.this;
        }
    }
}
