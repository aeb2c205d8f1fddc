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
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What one sound gear takes its drive through: connections, and stretches of shafts. */
final class Needs {
    private static final int FRONT_END = -1;

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

    private Optional<String> connectionOf(Fact fact) {
        if (fact instanceof Ties.Tie tie) {
            return Optional.of(tie.connection()).filter(id -> !id.startsWith("half-shaft "));
        }
        if (fact instanceof Ties.TieAt tie) {
            return Optional.of(tie.connection());
        }
        if (fact instanceof Ties.InTheCase held) {
            return Optional.of(held.connection());
        }
        if (fact instanceof Ties.OnOneRoad road
                && layout.find(Shaft.class, road.wheel()).isPresent()) {
            return Optional.of(road.connection());
        }
        return fact instanceof Ties.ThirdOf third ? Optional.of(third.connection()) : Optional.empty();
    }

    private List<Fact> stretch(List<Drive.Driven> chain, int index) {
        Drive.Driven link = chain.get(index);
        return layout.find(Shaft.class, link.body())
                .map(shaft -> {
                    // The clutch drives a shaft at its front end; an output shaft gives its drive at its rear end.
                    int from = index == 0 ? FRONT_END : place(shaft, link.driver(), link.connection());
                    int to = index + 1 == chain.size()
                            ? shaft.along().size()
                            : place(
                                    shaft,
                                    chain.get(index + 1).body(),
                                    chain.get(index + 1).connection());
                    return List.<Fact>of(
                            new Verdicts.NeedsStretch(gear, shaft.id(), Math.min(from, to), Math.max(from, to)));
                })
                .orElse(List.of());
    }

    /** Where along a shaft the drive comes to it from something else, or leaves it: what stands there, or an end. */
    private int place(Shaft shaft, String other, String connection) {
        if (shaft.along().contains(other)) {
            return shaft.along().indexOf(other);
        }
        String part = connection.substring(connection.indexOf(' ') + 1);
        if (shaft.along().contains(part)) {
            return shaft.along().indexOf(part);
        }
        boolean atTheRear = layout.find(Joint.class, part)
                        .filter(joint -> joint.from().equals(shaft.id()))
                        .isPresent()
                || layout.find(Differential.class, part)
                        .filter(differential -> differential.shaft().equals(Optional.of(shaft.id())))
                        .isPresent();
        return atTheRear ? shaft.along().size() : FRONT_END;
    }
}
