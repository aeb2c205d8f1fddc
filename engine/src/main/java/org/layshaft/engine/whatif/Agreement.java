package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.engine.symptom.World;

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

    /** Throws {@link IllegalStateException} where they differ about what becomes of a gear, or of neutral. */
    static void requireVerdicts(Run run, World equations) {
        List<String> differing = new ArrayList<>();
        run.derivation()
                .all(Verdicts.SoundGear.class)
                .map(Verdicts.SoundGear::gear)
                .forEach(gear -> {
                    boolean locks = isConcluded(run, new Verdicts.Locks(gear));
                    boolean notDriven = isConcluded(run, new Verdicts.NotDriven(gear));
                    if (equations.works(gear) != isConcluded(run, new Verdicts.Works(gear))
                            || equations.locks(gear) != locks
                            || equations.isWithoutDrive(gear) != (notDriven && !locks)) {
                        differing.add(gear);
                    }
                });
        boolean drives = run.derivation()
                .find(Verdicts.DrivesOtherwise.class, other -> other.gear().equals(Run.NEUTRAL))
                .isPresent();
        boolean locks = isConcluded(run, new Verdicts.Locks(Run.NEUTRAL));
        if (equations.neutralDrives() != drives || equations.locks(Run.NEUTRAL) != locks) {
            differing.add(Run.NEUTRAL);
        }
        if (!differing.isEmpty()) {
            throw new IllegalStateException(
                    "Rules and equations disagree about what becomes of %s.".formatted(String.join(", ", differing)));
        }
    }

    private static boolean isConcluded(Run run, Fact verdict) {
        return run.derivation().stepOf(verdict).isPresent();
    }
}
