package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The teeth are not pointed: enough is left of them at the tip to be hardened through without breaking away. */
public final class TopLand extends ParallelReckoning {
    private static final double LEAST_MODULES = 0.2;

    public TopLand() {
        super("top-land", "Top land");
    }

    @Override
    Optional<Judgement> reckon(Judging judging, Held one, Held other) {
        InvoluteGear first = Teeth.tipped(one);
        InvoluteGear second = Teeth.tipped(other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure ofOne = Figure.of(one.name(), first.topLandMm(), Unit.MM);
        Figure ofOther = Figure.of(other.name(), second.topLandMm(), Unit.MM);
        boolean firstIsWorse = inModules(first) <= inModules(second);
        return judging.between(
                List.of(ofOne, ofOther),
                firstIsWorse ? ofOne : ofOther,
                LEAST_MODULES * (firstIsWorse ? first : second).moduleMm(),
                Double.POSITIVE_INFINITY,
                "0.2 modules: " + Limit.COMMON_PRACTICE);
    }

    private static double inModules(InvoluteGear gear) {
        return gear.topLandMm() / gear.moduleMm();
    }
}
