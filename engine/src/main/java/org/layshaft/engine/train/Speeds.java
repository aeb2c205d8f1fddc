package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/**
 * All the ways in which the bodies of a train can turn, some speeds being given. In each tree of the {@link Forest} one
 * speed gives all others; only the speeds of the roots are solved for. Not thread-safe.
 */
final class Speeds {
    private final Train train;
    private final Ratios ratios;

    private final LinearSystem roots;

    private Speeds(Train train) {
        this.train = train;
        this.ratios = new Ratios(train);
        this.roots = new LinearSystem(ratios.roots());
        Forest forest = ratios.forest();
        roots.require(LinearForm.of(ratios.rootOf(forest.ground()), Fraction.ONE));
        for (int number : forest.loose()) {
            roots.require(ratios.form(forest.row(number), 0));
        }
    }

    /** What is left when these speeds are given, in turns. */
    static Speeds of(Train train, Map<String, Fraction> given) {
        Speeds speeds = new Speeds(train);
        given.forEach(speeds::give);
        return speeds;
    }

    /** What is left when the input turns once. */
    static Speeds perTurnOfInput(Train train) {
        Speeds speeds = new Speeds(train);
        speeds.give(train.input(), Fraction.ONE);
        return speeds;
    }

    Forest forest() {
        return ratios.forest();
    }

    /** Whether the speeds given can be. */
    boolean arePossible() {
        return roots.isSolvable();
    }

    /** Whether the connections let this body only stand still. */
    boolean holds(String body) {
        return form(train.number(body)).isZero();
    }

    /** The speed that is fixed by what is given; empty where the body can turn at any other. */
    Optional<Fraction> of(String body) {
        return fixed(form(train.number(body)));
    }

    /** Every speed that is fixed, in the order of the train. */
    Map<String, Fraction> fixed() {
        List<Optional<Fraction>> ofRoots = new ArrayList<>();
        for (int unknown = 0; unknown < roots.one(); unknown++) {
            ofRoots.add(fixed(roots.valueOf(unknown)));
        }
        Map<String, Fraction> fixed = new LinkedHashMap<>(2 * train.bodies().size());
        for (int body = 0; body < train.bodies().size(); body++) {
            Optional<Fraction> ofRoot = ofRoots.get(ratios.rootOf(body));
            if (ofRoot.isPresent()) {
                fixed.put(train.bodies().get(body), ofRoot.get().times(ratios.of(body)));
            }
        }
        return fixed;
    }

    /** One motion at the speeds given: what is not fixed by them stands, as far as it can. */
    Map<String, Fraction> asGiven() {
        return along(roots.one());
    }

    /** Motions that make this body turn while everything given stands; none where its speed is fixed. */
    List<Map<String, Fraction>> freedomsOf(String body) {
        List<Map<String, Fraction>> freedoms = new ArrayList<>();
        for (int unknown : form(train.number(body)).unknowns()) {
            if (unknown != roots.one()) {
                freedoms.add(along(unknown));
            }
        }
        return freedoms;
    }

    /** A motion at the speeds given in which this body stands; empty where there is none. */
    Optional<Map<String, Fraction>> asGivenWhileStands(String body) {
        LinearForm form = form(train.number(body));
        Map<String, Fraction> motion = asGiven();
        Fraction turns = form.coefficientOf(roots.one());
        if (turns.isZero()) {
            return Optional.of(motion);
        }
        int first = form.unknowns()[0];
        if (first == roots.one()) {
            return Optional.empty();
        }
        Fraction back = turns.over(form.coefficientOf(first)).negated();
        along(first).forEach((each, speed) -> motion.merge(each, speed.times(back), Fraction::plus));
        return Optional.of(motion);
    }

    private Map<String, Fraction> along(int unknown) {
        Fraction[] ofRoots = new Fraction[roots.one()];
        for (int root = 0; root < ofRoots.length; root++) {
            ofRoots[root] = roots.valueOf(root).coefficientOf(unknown);
        }
        Map<String, Fraction> motion = new LinkedHashMap<>(2 * train.bodies().size());
        for (int body = 0; body < train.bodies().size(); body++) {
            motion.put(train.bodies().get(body), ofRoots[ratios.rootOf(body)].times(ratios.of(body)));
        }
        return motion;
    }

    private Optional<Fraction> fixed(LinearForm form) {
        if (form.isZero()) {
            return Optional.of(Fraction.ZERO);
        }
        Fraction fixed = form.coefficientOf(roots.one());
        return fixed.isZero() || form.terms() > 1 ? Optional.empty() : Optional.of(fixed);
    }

    private void give(String body, Fraction speed) {
        roots.require(form(train.number(body)).plus(LinearForm.of(roots.one(), speed.negated())));
    }

    private LinearForm form(int body) {
        return roots.valueOf(ratios.rootOf(body)).times(ratios.of(body));
    }
}
