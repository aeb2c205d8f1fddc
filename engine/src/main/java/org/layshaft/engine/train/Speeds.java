package org.layshaft.engine.train;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/** All the ways in which the bodies of a train can turn, some speeds being given. Not thread-safe. */
final class Speeds {
    private final List<String> bodies;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final LinearSystem system;

    private Speeds(List<String> bodies) {
        this.bodies = bodies;
        bodies.forEach(body -> numbers.put(body, numbers.size()));
        this.system = new LinearSystem(bodies.size());
    }

    /** What is left when these speeds are given, in turns. */
    static Speeds of(Train train, Map<String, Fraction> given) {
        Speeds speeds = new Speeds(train.bodies());
        train.connections().forEach(connection -> speeds.system.require(speeds.form(connection.equation())));
        given.forEach(speeds::give);
        return speeds;
    }

    /** What is left when the input turns once. */
    static Speeds perTurnOfInput(Train train) {
        return of(train, Map.of(train.input(), Fraction.ONE));
    }

    /** Whether the speeds given can be. */
    boolean arePossible() {
        return system.isSolvable();
    }

    /** Whether the connections let this body only stand still. */
    boolean holds(String body) {
        return form(body).isZero();
    }

    /** The speed that is fixed by what is given; empty where the body can turn at any other. */
    Optional<Fraction> of(String body) {
        LinearForm form = form(body);
        Fraction fixed = form.coefficientOf(system.one());
        return form.isZero() || !fixed.isZero() && form.unknowns().length == 1 ? Optional.of(fixed) : Optional.empty();
    }

    /** Every speed that is fixed, in the order of the train. */
    Map<String, Fraction> fixed() {
        Map<String, Fraction> fixed = new LinkedHashMap<>();
        bodies.forEach(body -> of(body).ifPresent(speed -> fixed.put(body, speed)));
        return fixed;
    }

    /** One motion at the speeds given: what is not fixed by them stands, as far as it can. */
    Map<String, Fraction> asGiven() {
        return along(system.one());
    }

    /** Motions that make this body turn while everything given stands; none where its speed is fixed. */
    List<Map<String, Fraction>> freedomsOf(String body) {
        return Arrays.stream(form(body).unknowns())
                .filter(unknown -> unknown != system.one())
                .mapToObj(this::along)
                .toList();
    }

    /** A motion at the speeds given in which the turns of these bodies add up to zero; empty where there is none. */
    Optional<Map<String, Fraction>> asGivenWhileStand(List<String> load) {
        LinearForm sum = load.stream().map(this::form).reduce(LinearForm.ZERO, LinearForm::plus);
        Map<String, Fraction> motion = asGiven();
        Fraction turns = sum.coefficientOf(system.one());
        if (turns.isZero()) {
            return Optional.of(motion);
        }
        int first = sum.unknowns()[0];
        if (first == system.one()) {
            return Optional.empty();
        }
        Fraction back = turns.over(sum.coefficientOf(first)).negated();
        along(first).forEach((body, speed) -> motion.merge(body, speed.times(back), Fraction::plus));
        return Optional.of(motion);
    }

    private Map<String, Fraction> along(int unknown) {
        Map<String, Fraction> motion = new LinkedHashMap<>();
        bodies.forEach(body -> motion.put(body, form(body).coefficientOf(unknown)));
        return motion;
    }

    private void give(String body, Fraction speed) {
        system.require(LinearForm.of(numbers.get(body), Fraction.ONE)
                .plus(LinearForm.of(system.one(), Fraction.ONE), speed.negated()));
    }

    private LinearForm form(String body) {
        return system.valueOf(numbers.get(body));
    }

    private LinearForm form(Equation equation) {
        LinearForm form = LinearForm.ZERO;
        for (Map.Entry<String, Long> term : equation.coefficients().entrySet()) {
            form = form.plus(LinearForm.of(numbers.get(term.getKey()), Fraction.of(term.getValue())));
        }
        return form;
    }
}
