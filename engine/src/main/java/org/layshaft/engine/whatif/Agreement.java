package org.layshaft.engine.whatif;

import java.util.Optional;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;

/**
 * Holds the rules against the equations. The two share no code beyond the facts; where they differ, one of them is
 * wrong, and nothing is answered.
 */
final class Agreement {
    private Agreement() {}

    /** Throws {@link IllegalStateException} where rules and equations differ about this selection. */
    static void require(Run run, String at) {
        Motion motion = run.motion(at);
        Motion.Outcome byEquations = motion.outcome();
        Optional<Fraction> speed = run.speedOfOutput(at);
        boolean agree = run.isContradicted(at) || run.isOutputHeld(at)
                ? byEquations != Motion.Outcome.DRIVES && byEquations != Motion.Outcome.NEUTRAL
                : speed.map(Fraction::inverse).equals(motion.ratio());
        if (!agree) {
            throw new IllegalStateException(
                    "Rules and equations disagree about %s: the rules find %s, the equations %s %s."
                            .formatted(
                                    at,
                                    run.isContradicted(at) ? "a contradiction" : speed,
                                    byEquations,
                                    motion.ratio()));
        }
    }
}
