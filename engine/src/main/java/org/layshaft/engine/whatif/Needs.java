package org.layshaft.engine.whatif;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.layshaft.engine.rules.Derivation;
import org.layshaft.engine.rules.fact.Drive;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Ties;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What one sound gear takes its drive through: connections, and stretches of shafts. */
final class Needs {
    private final Layout layout;
    private final String gear;
    private final Derivation derivation;
    private final List<List<Drive.Driven>> chains;

    Needs(Layout layout, Run run, String gear) {
        this.layout = layout;
        this.gear = gear;
        this.derivation = run.derivation();
        this.chains =
                run.outputs().stream().map(output -> run.chain(gear, output)).toList();
    }

    List<Fact> all() {
        Set<Fact> needs = new LinkedHashSet<>();
        connections().forEach(connection -> needs.add(new Verdicts.Needs(gear, connection)));
        for (List<Drive.Driven> chain : chains) {
            for (int i = 0; i < chain.size(); i++) {
                Drive.Driven link = chain.get(i);
                needs.addAll(stretch(chain, i));
            }
        }
        return List.copyOf(needs);
    }

    /**
     * All that the speed of the outputs rests on, what holds a ring still included. Half-shafts are the differential's
     * business: what their loss means is said by a rule of its own.
     */
    private Set<String> connections() {
        Set<String> connections = new LinkedHashSet<>();
        Set<Fact> seen = new HashSet<>();
        chains.stream()
                .filter(chain -> !chain.isEmpty())
                .forEach(chain -> collect(chain.get(chain.size() - 1), seen, connections));
        return connections;
    }

    private void collect(Fact fact, Set<Fact> seen, Set<String> connections) {
        if (!seen.add(fact)) {
            return;
        }
        connectionOf(fact).ifPresent(ids -> connections.addAll(List.of(ids.split(Pattern.quote(EpicyclicFacts.AND)))));
        derivation
                .stepOf(fact)
                .ifPresent(step -> step.premises().forEach(premise -> collect(premise, seen, connections)));
    }

    private static Optional<String> connectionOf(Fact fact) {
        if (fact instanceof Ties.Tie tie) {
            return Optional.of(tie.connection()).filter(id -> !id.startsWith("half-shaft "));
        }
        if (fact instanceof Ties.TieAt tie) {
            return Optional.of(tie.connection());
        }
        return fact instanceof Ties.ThirdOf third ? Optional.of(third.connection()) : Optional.empty();
    }

    private List<Fact> stretch(List<Drive.Driven> chain, int index) {
        String body = chain.get(index).body();
        return layout.find(Shaft.class, body)
                .map(shaft -> {
                    List<String> along = shaft.along();
                    // The clutch drives a shaft at its front end; an output shaft gives its drive at its rear end.
                    int from =
                            index == 0 ? -1 : along.indexOf(chain.get(index - 1).body());
                    int to = index + 1 == chain.size()
                            ? along.size()
                            : along.indexOf(chain.get(index + 1).body());
                    return List.<Fact>of(new Verdicts.NeedsStretch(gear, body, Math.min(from, to), Math.max(from, to)));
                })
                .orElse(List.of());
    }
}
