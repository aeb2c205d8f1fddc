package org.layshaft.engine.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.rule.Match;
import org.layshaft.engine.rules.fact.Fact;

/** Listens to one session and notes, for each fact that a rule inserts, the rule and what it matched. */
final class Provenance {
    private final Map<Fact, Derivation.Step> steps = new LinkedHashMap<>();
    private Match firing;

    Map<Fact, Derivation.Step> steps() {
        return steps;
    }

    DefaultAgendaEventListener ofMatches() {
        return new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                firing = event.getMatch();
            }

            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                firing = null;
            }
        };
    }

    DefaultRuleRuntimeEventListener ofInsertions() {
        return new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (firing != null && event.getObject() instanceof Fact concluded) {
                    steps.putIfAbsent(concluded, new Derivation.Step(RuleId.of(firing.getRule()), premises(firing)));
                }
            }
        };
    }

    private static List<Fact> premises(Match match) {
        return match.getObjects().stream()
                .filter(Fact.class::isInstance)
                .map(Fact.class::cast)
                .toList();
    }
}
