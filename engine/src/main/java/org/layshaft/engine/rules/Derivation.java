package org.layshaft.engine.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kie.api.runtime.KieSession;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Settled;
import org.layshaft.engine.rules.fact.Stage;

/**
 * What follows from some facts by the rules, every conclusion with the rule and the premises it rests on. Immutable.
 */
public final class Derivation {

    /**
     * How a conclusion was drawn.
     *
     * @param rule id of the rule
     * @param premises the facts it matched, in the order of the rule's conditions
     */
    public record Step(String rule, List<Fact> premises) {
        public Step {
            premises = List.copyOf(premises);
        }
    }

    private final Map<Fact, Step> steps;
    private final Map<Class<?>, List<Fact>> byType;

    private Derivation(List<Fact> given, Map<Fact, Step> steps) {
        this.steps = steps;
        this.byType =
                Stream.concat(given.stream(), steps.keySet().stream()).collect(Collectors.groupingBy(Fact::getClass));
    }

    /** Runs the built-in rules over these facts, stage after stage. The order of the facts decides among equal reasons. */
    public static Derivation from(List<? extends Fact> given) {
        List<Fact> distinct = given.stream().<Fact>map(fact -> fact).distinct().toList();
        Provenance provenance = new Provenance();
        KieSession session = RuleBase.builtIn().newKieSession();
        try {
            session.addEventListener(provenance.ofMatches());
            session.addEventListener(provenance.ofInsertions());
            distinct.forEach(session::insert);
            session.fireAllRules();
            for (Stage stage : Stage.values()) {
                session.insert(new Settled(stage));
                session.fireAllRules();
            }
        } finally {
            session.dispose();
        }
        return new Derivation(distinct, Collections.unmodifiableMap(new LinkedHashMap<>(provenance.steps())));
    }

    /** How this was concluded; empty for a given fact, and for what does not follow. */
    public Optional<Step> stepOf(Fact fact) {
        return Optional.ofNullable(steps.get(fact));
    }

    /** Everything concluded, in the order in which it was. */
    Set<Fact> conclusions() {
        return steps.keySet();
    }

    /** Every fact of this type, given or concluded, in the order in which it came. */
    public <F extends Fact> Stream<F> all(Class<F> type) {
        return byType.getOrDefault(type, List.of()).stream().map(type::cast);
    }

    public <F extends Fact> Optional<F> find(Class<F> type, Predicate<F> which) {
        return all(type).filter(which).findFirst();
    }

    /** Ids of the rules that drew at least one conclusion, for coverage. */
    public List<String> rulesThatFired() {
        return steps.values().stream().map(Step::rule).distinct().sorted().toList();
    }
}
