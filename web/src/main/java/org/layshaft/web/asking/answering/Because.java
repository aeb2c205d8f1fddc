package org.layshaft.web.asking.answering;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Reason;

/**
 * The heart of a derivation in a sentence or two: what a failure does, and what follows of that at once for the
 * conclusion. The whole derivation stands beside it for whoever wants it.
 */
final class Because {
    private final Facts facts;

    Because(Facts facts) {
        this.facts = facts;
    }

    /** Why things are as they are in this possibility. */
    List<String> of(Possibility possibility) {
        Set<String> failures = new LinkedHashSet<>();
        possibility
                .faults()
                .forEach(fault -> failures.add(facts.reasoner().say(facts.box().layout(), fault)));
        Set<String> says = new LinkedHashSet<>();
        for (Reason conclusion : possibility.because()) {
            for (String failure : failures) {
                pathTo(failure, conclusion).ifPresent(path -> says.addAll(chief(path)));
            }
            if (says.isEmpty()) {
                says.add(Standing.sentence(conclusion.says()));
                conclusion.from().stream()
                        .filter(fact -> fact.rule().isEmpty())
                        .limit(1)
                        .forEach(fact -> says.add(Standing.sentence(fact.says())));
            }
        }
        return List.copyOf(says);
    }

    /** What the conclusion rests on first, and what the failure does. */
    private static List<String> chief(List<Reason> path) {
        List<String> says = new ArrayList<>();
        Reason failure = path.get(path.size() - 1);
        Reason effect = path.get(path.size() - 2);
        if (path.size() > 3) {
            says.add(Standing.sentence(path.get(1).says()));
        }
        String why = effect.says().equals(failure.says()) ? "" : ": " + failure.says();
        says.add(Standing.sentence(effect.says() + why));
        return says;
    }

    /** From the conclusion to the fact of this failure, by the shortest way. */
    private static Optional<List<Reason>> pathTo(String failure, Reason conclusion) {
        Deque<List<Reason>> open = new ArrayDeque<>(List.of(List.of(conclusion)));
        while (!open.isEmpty()) {
            List<Reason> path = open.poll();
            Reason last = path.get(path.size() - 1);
            if (path.size() > 1
                    && last.rule().isEmpty()
                    && last.from().isEmpty()
                    && last.says().equals(failure)) {
                return Optional.of(path);
            }
            for (Reason next : last.from()) {
                List<Reason> longer = new ArrayList<>(path);
                longer.add(next);
                open.add(longer);
            }
        }
        return Optional.empty();
    }
}
