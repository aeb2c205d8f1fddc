package org.layshaft.engine.rules;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.layshaft.engine.rules.fact.Fact;

/** Follows conclusions down to the facts given. */
final class Groundwork {
    private final Derivation derivation;
    private final Set<Fact> given;
    private final Set<Fact> sound = new HashSet<>();

    private Groundwork(Derivation derivation, List<Fact> given) {
        this.derivation = derivation;
        this.given = new HashSet<>(given);
    }

    /** Fails unless every conclusion rests, step by step and never on itself, on facts given. */
    static void requireFrom(List<Fact> given, Derivation derivation) {
        Groundwork ground = new Groundwork(derivation, given);
        derivation.conclusions().forEach(fact -> ground.require(fact, new LinkedHashSet<>()));
    }

    /** The facts given that a conclusion rests on. */
    static Set<Fact> of(Fact fact, Derivation derivation) {
        Set<Fact> ground = new LinkedHashSet<>();
        derivation
                .stepOf(fact)
                .ifPresentOrElse(
                        step -> step.premises().forEach(premise -> ground.addAll(of(premise, derivation))),
                        () -> ground.add(fact));
        return ground;
    }

    private void require(Fact fact, Set<Fact> above) {
        if (given.contains(fact) || sound.contains(fact)) {
            return;
        }
        if (!above.add(fact)) {
            fail("%s rests on itself.".formatted(fact));
        }
        derivation
                .stepOf(fact)
                .orElseGet(() -> fail("%s is neither given nor concluded.".formatted(fact)))
                .premises()
                .forEach(premise -> require(premise, above));
        above.remove(fact);
        sound.add(fact);
    }
}
