package org.layshaft.engine.train;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.exact.LinearForm;
import org.layshaft.engine.exact.LinearSystem;

/**
 * Torques, as the dual of speeds. Each connection bears one force λ and puts on each body that it ties the torque
 * coefficient times λ; with the torques τ from outside, every body is in balance: Aᵀλ = −τ. Exact and without losses.
 * Stateless.
 */
public final class Statics {
    private Statics() {}

    /** What a torque of 1 on the input comes to, the load lying on the output. */
    public static Balance of(Train train) {
        Speeds speeds = Speeds.perTurnOfInput(train);
        return TrainSolver.outcome(train, speeds) == Outcome.DRIVES
                ? torques(train, speeds, driving(train, speeds))
                : withoutDrive(train, speeds);
    }

    /** Connections that carry nothing, whatever torques stand on the input and on the output. */
    public static Set<String> carryingNothing(Train train) {
        LinearForm[] totals = new LinearForm[train.bodies().size()];
        Arrays.fill(totals, LinearForm.ZERO);
        LinearSystem system = new LinearSystem(train.rows().size());
        for (int number = 0; number < train.rows().size(); number++) {
            Row row = train.rows().get(number);
            for (int place = 0; place < row.bodies().length; place++) {
                int body = row.bodies()[place];
                totals[body] = totals[body].plus(LinearForm.of(number, row.coefficient(place)));
            }
        }
        for (int body = 0; body < totals.length; body++) {
            if (body != train.number(train.input()) && body != train.number(train.output())) {
                system.require(totals[body]);
            }
        }
        Set<String> idle = new LinkedHashSet<>();
        for (int number = 0; number < train.rows().size(); number++) {
            if (system.valueOf(number).isZero()) {
                idle.add(train.rows().get(number).id());
            }
        }
        return idle;
    }

    /** The forces of a train whose output turns with its input. */
    static Forces driving(Train train, Speeds speeds) {
        Map<Integer, Fraction> outside = Map.of(
                train.number(train.input()), Fraction.ONE.negated(), train.number(train.output()), load(train, speeds));
        return Forces.addingUpTo(outside, speeds.forest()).orElseThrow();
    }

    static Balance.Torques torques(Train train, Speeds speeds, Forces forces) {
        return new Balance.Torques(forces.byConnection(), load(train, speeds), !forces.areUnique());
    }

    /** What a train comes to whose output does not turn with its input. */
    static Balance withoutDrive(Train train, Speeds speeds) {
        return speeds.arePossible()
                ? new Balance.Slips(speeds.asGivenWhileStands(train.output()).orElseThrow())
                : new Balance.Held();
    }

    private static Fraction load(Train train, Speeds speeds) {
        return speeds.of(train.output()).orElseThrow().inverse();
    }
}
