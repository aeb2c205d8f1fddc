package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The backlash stays within what both gears are to run with, wherever the case's tolerance lets the axes stand. */
public final class Backlash extends ParallelReckoning {
    public Backlash() {
        super("backlash", "Backlash");
    }

    @Override
    Optional<Judgement> reckon(Judging judging, Held one, Held other) {
        InvoluteGear first = Teeth.thick(one, Backlash::middleMm);
        InvoluteGear second = Teeth.thick(other, Backlash::middleMm);
        Axes axes = Axes.asked(judging);
        double leastMm = Math.max(one.number(FactName.BACKLASH_LEAST_MM), other.number(FactName.BACKLASH_LEAST_MM));
        double mostMm = Math.min(one.number(FactName.BACKLASH_MOST_MM), other.number(FactName.BACKLASH_MOST_MM));
        if (judging.isUntold()) {
            return judging.untold();
        }
        return Mated.of(first, second, axes).flatMap(mated -> judge(judging, mated, leastMm, mostMm));
    }

    private static double middleMm(Held gear) {
        return (gear.number(FactName.BACKLASH_LEAST_MM) + gear.number(FactName.BACKLASH_MOST_MM)) / 2;
    }

    private static Optional<Judgement> judge(Judging judging, Mated mated, double leastMm, double mostMm) {
        double nearMm = mated.near().circumferentialBacklashMm();
        double farMm = mated.far().circumferentialBacklashMm();
        Figure smallest = Figure.of("the smallest backlash", Math.min(nearMm, farMm), Unit.MM);
        Figure greatest = Figure.of("the greatest backlash", Math.max(nearMm, farMm), Unit.MM);
        Figure worse = leastMm - smallest.number() > greatest.number() - mostMm ? smallest : greatest;
        return judging.between(
                List.of(smallest, greatest), worse, leastMm, mostMm, "the backlash that both gears are to run with");
    }
}
