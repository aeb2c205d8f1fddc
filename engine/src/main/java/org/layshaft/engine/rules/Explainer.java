package org.layshaft.engine.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.rules.fact.Drive.Driven;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.words.Names;

/**
 * Puts a derivation into words.
 *
 * <p>A chain of bodies that drive one another is told from its beginning to its end, one line for each, rather than
 * nested from its end to its beginning.
 */
public final class Explainer {
    private final Derivation derivation;
    private final Names names;

    public Explainer(Derivation derivation, Names names) {
        this.derivation = derivation;
        this.names = names;
    }

    /** Why a fact is so: itself in words, over what it rests on. */
    public Reason why(Fact fact) {
        Optional<Derivation.Step> step = derivation.stepOf(fact);
        List<Fact> premises = step.map(Derivation.Step::premises).orElseGet(fact::restsOn);
        return new Reason(step.map(Derivation.Step::rule).orElse(""), fact.says(names), told(premises));
    }

    private List<Reason> told(List<Fact> premises) {
        return premises.stream().flatMap(this::linesOf).distinct().toList();
    }

    private Stream<Reason> linesOf(Fact premise) {
        return premise instanceof Driven driven ? chainTo(driven).stream().map(this::link) : Stream.of(why(premise));
    }

    /** One link of the chain, over what ties it to the link before. */
    private Reason link(Driven driven) {
        Derivation.Step step = derivation.stepOf(driven).orElseThrow();
        List<Fact> ties = step.premises().stream()
                .filter(premise -> !(premise instanceof Driven))
                .flatMap(tie -> derivation.stepOf(tie).map(Derivation.Step::premises).orElse(List.of(tie)).stream())
                .toList();
        return new Reason(step.rule(), driven.says(names), driven.connection().isEmpty() ? List.of() : told(ties));
    }

    private List<Driven> chainTo(Driven last) {
        Set<Driven> chain = new LinkedHashSet<>();
        Optional<Driven> link = Optional.of(last);
        while (link.isPresent() && chain.add(link.get())) {
            Driven here = link.get();
            link = derivation.stepOf(here).stream()
                    .flatMap(step -> step.premises().stream())
                    .filter(Driven.class::isInstance)
                    .map(Driven.class::cast)
                    .findFirst();
        }
        List<Driven> fromTheSource = new ArrayList<>(chain);
        Collections.reverse(fromTheSource);
        return fromTheSource;
    }
}
