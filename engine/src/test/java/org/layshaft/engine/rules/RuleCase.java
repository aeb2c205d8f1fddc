package org.layshaft.engine.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.rules.fact.Fact;

/**
 * Facts from which one rule draws a conclusion, and facts that differ in one so that it does not.
 *
 * @param given no more than the conclusion needs
 * @param fires ids of all rules that draw conclusions from them
 */
record RuleCase(
        String rule, List<Fact> given, Fact concluded, List<Fact> premises, List<String> fires, List<Near> nearMisses) {

    /**
     * Facts that differ in one.
     *
     * @param fires ids of all rules that draw conclusions from them
     */
    record Near(List<Fact> given, List<String> fires) {}

    static RuleCase of(String rule, Fact... given) {
        return new RuleCase(rule, List.of(given), null, List.of(), List.of(), List.of());
    }

    RuleCase concludes(Fact fact, Fact... from) {
        return new RuleCase(rule, given, fact, List.of(from), fires, nearMisses);
    }

    /** The other rules that draw conclusions from the facts given. */
    RuleCase besides(String... rules) {
        List<String> all = Stream.concat(Stream.of(rule), Stream.of(rules)).toList();
        return new RuleCase(rule, given, concluded, premises, all, nearMisses);
    }

    RuleCase alone() {
        return besides();
    }

    RuleCase notWithout(Fact left, String... fires) {
        return near(given.stream().filter(fact -> !fact.equals(left)).toList(), fires);
    }

    RuleCase notWith(Fact added, String... fires) {
        return near(Stream.concat(given.stream(), Stream.of(added)).toList(), fires);
    }

    RuleCase notWithInstead(Fact left, Fact added, String... fires) {
        return near(given.stream().map(fact -> fact.equals(left) ? added : fact).toList(), fires);
    }

    private RuleCase near(List<Fact> facts, String... fires) {
        if (facts.equals(given)) {
            throw new IllegalArgumentException("A near miss of %s differs in no fact.".formatted(rule));
        }
        List<Near> more = new ArrayList<>(nearMisses);
        more.add(new Near(facts, List.of(fires)));
        return new RuleCase(rule, given, concluded, premises, this.fires, List.copyOf(more));
    }

    /** Named by rule in test reports. */
    @Override
    public String toString() {
        return "%s: %s".formatted(rule, concluded);
    }
}
