package org.layshaft.engine.train;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/** How everything turns in one condition, and what is loaded then. Not thread-safe. */
public final class Turning {
    /** Unknowns: the speeds of engine and road; those of the roots of the {@link Forest} come after. */
    private static final int ENGINE = 0;

    private static final int ROAD = 1;
    private static final int ROOTS = 2;

    private final Train train;
    private final Condition condition;
    private final Ratios ratios;
    private final LinearSystem system;

    private Turning(Train train, Condition condition) {
        this.train = train.inBend(condition.bend());
        this.condition = condition;
        this.ratios = new Ratios(this.train);
        this.system = new LinearSystem(ROOTS + ratios.roots());
        Forest forest = ratios.forest();
        system.require(LinearForm.of(ROOTS + ratios.rootOf(forest.ground()), Fraction.ONE));
        for (int number : forest.loose()) {
            system.require(ratios.form(forest.row(number), ROOTS));
        }
        if (condition.clutch() == Condition.Clutch.ENGAGED) {
            tie(train.input(), ENGINE);
        }
        if (condition.vehicle() != Condition.Vehicle.LIFTED) {
            tie(train.output(), ROAD);
        }
        if (condition.vehicle() == Condition.Vehicle.STANDING) {
            system.require(LinearForm.of(ROAD, Fraction.ONE));
        }
    }

    public static Turning of(Train train, Condition condition) {
        return new Turning(train, condition);
    }

    /** How fast a body turns. */
    public Speed speedOf(String body) {
        return speed(form(body));
    }

    /** How fast one body turns against another: a free gear on its shaft, a sleeve beside the gear that it is to couple. */
    public Speed difference(String one, String other) {
        return speed(form(one).plus(form(other), Fraction.ONE.negated()));
    }

    /**
     * Whether the engine can turn at all: not where the box is locked, nor in gear with the vehicle standing. With the
     * clutch released it always can.
     */
    public boolean engineCanTurn() {
        return !system.valueOf(ENGINE).isZero();
    }

    /** Whether the wheels can roll so: not where the box is locked, nor in a bend on an axle whose wheels are tied. */
    public boolean wheelsCanRoll() {
        return !form(train.output()).isZero();
    }

    /** Bodies whose speed this fixes so, in the order of the train. */
    public List<String> bodies(Speed.FixedBy fixedBy) {
        return train.bodies().stream()
                .filter(body -> speedOf(body).fixedBy() == fixedBy)
                .toList();
    }

    /**
     * What is loaded and which way, without losses. Empty where nothing is: the clutch is released, the vehicle stands or
     * hangs, or the output does not follow the input.
     */
    public Optional<Power> loads() {
        if (condition.clutch() == Condition.Clutch.RELEASED || condition.vehicle() != Condition.Vehicle.ROLLING) {
            return Optional.empty();
        }
        return Power.of(train).map(power -> condition.pull() == Condition.Pull.DRIVE ? power : power.reversed());
    }

    private void tie(String body, int unknown) {
        system.require(form(body).plus(LinearForm.of(unknown, Fraction.ONE.negated())));
    }

    private LinearForm form(String body) {
        int number = train.number(body);
        return system.valueOf(ROOTS + ratios.rootOf(number)).times(ratios.of(number));
    }

    private Speed speed(LinearForm form) {
        Fraction ofEngine = form.coefficientOf(ENGINE);
        Fraction ofRoad = form.coefficientOf(ROAD);
        int fixed = (ofEngine.isZero() ? 0 : 1) + (ofRoad.isZero() ? 0 : 1);
        return new Speed(ofEngine, ofRoad, form.terms() > fixed);
    }
}
