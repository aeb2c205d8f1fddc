package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The tips of each gear keep clear of the roots of the other. */
public final class TipClearance extends PairReckoning {
    private static final double LEAST_MODULES = 0.1;

    public TipClearance() {
        super("tip-clearance", "Clearance at the tips");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Mated mated) {
        Figure ofOne = Figure.of(
                "the tips of " + judging.one().name(), mated.least(InvolutePair::tipClearanceFirstMm), Unit.MM);
        Figure ofOther = Figure.of(
                "the tips of " + judging.other().name(), mated.least(InvolutePair::tipClearanceSecondMm), Unit.MM);
        return judging.between(
                List.of(ofOne, ofOther),
                ofOne.number() <= ofOther.number() ? ofOne : ofOther,
                LEAST_MODULES * mated.near().first().moduleMm(),
                Double.POSITIVE_INFINITY,
                "0.1 modules: " + Limit.COMMON_PRACTICE);
    }
}
