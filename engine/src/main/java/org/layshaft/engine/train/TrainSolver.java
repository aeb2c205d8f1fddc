package org.layshaft.engine.train;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/**
 * Says what a train does, from the space of all motions that its connections allow. Exact over the rationals. Stateless.
 *
 * <p>Input and output are judged on the whole space: it {@linkplain Outcome#DRIVES drives} where the output turns at one
 * fixed ratio to the input in every motion, and does not only stand; a body is held where it stands in every motion.
 * What else is free, an idle gear or the wheels in neutral, does not matter to that.
 */
public final class TrainSolver {
    private TrainSolver() {}

    /**
     * The motion with the input turning once.
     *
     * <p>A speed is given for each body that has the same one in every such motion, and for no other: a gear that
     * nothing ties, or the output in neutral, has none. Where the input is held, the bodies that can only stand are
     * given the speed zero, and no other has a speed.
     *
     * <p>Where it drives, the bodies that carry power are those under a force (see {@link Statics}), nearest to the
     * input first; with paths in parallel, all of them.
     */
    public static Motion solve(Train train) {
        Speeds speeds = Speeds.perTurnOfInput(train);
        Outcome outcome = outcome(train, speeds);
        return outcome == Outcome.DRIVES
                ? driving(train, speeds, Statics.driving(train, speeds))
                : idle(outcome, speeds);
    }

    /** The same motion, and the torques with it. */
    public static State stateOf(Train train) {
        Speeds speeds = Speeds.perTurnOfInput(train);
        Outcome outcome = outcome(train, speeds);
        if (outcome != Outcome.DRIVES) {
            return new State(idle(outcome, speeds), Statics.withoutDrive(train, speeds));
        }
        Forces forces = Statics.driving(train, speeds);
        return new State(driving(train, speeds, forces), Statics.torques(train, speeds, forces));
    }

    /**
     * The speeds that follow from some that are given: standing with the clutch engaged, the input turns and the wheels
     * do not; rolling, they do.
     *
     * @param given speeds by body id, in any one unit
     * @return in the same unit, every speed that these fix; empty where the connections do not allow them together
     */
    public static Optional<Map<String, Fraction>> speedsGiven(Train train, Map<String, Fraction> given) {
        Speeds speeds = Speeds.of(train, given);
        return speeds.arePossible() ? Optional.of(speeds.fixed()) : Optional.empty();
    }

    static Outcome outcome(Train train, Speeds perTurnOfInput) {
        boolean outputHeld = perTurnOfInput.holds(train.output());
        if (!perTurnOfInput.arePossible()) {
            return outputHeld ? Outcome.LOCKED : Outcome.INPUT_HELD;
        }
        if (outputHeld) {
            return Outcome.OUTPUT_HELD;
        }
        return perTurnOfInput.of(train.output()).isPresent() ? Outcome.DRIVES : Outcome.NEUTRAL;
    }

    private static Motion driving(Train train, Speeds speeds, Forces forces) {
        Fraction output = speeds.of(train.output()).orElseThrow();
        return new Motion(
                Outcome.DRIVES, speeds.fixed(), PowerPath.of(train, forces.byRow()), Optional.of(output.inverse()));
    }

    private static Motion idle(Outcome outcome, Speeds speeds) {
        return new Motion(outcome, speeds.fixed(), Set.of(), Optional.empty());
    }
}
