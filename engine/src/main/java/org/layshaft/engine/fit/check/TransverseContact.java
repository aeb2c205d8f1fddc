package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.catalogue.FactName.Unit;

/** Looked at from the side, a next pair of teeth touches before the last one parts. */
public final class TransverseContact extends PairReckoning {
    private static final double LEAST = 1;

    public TransverseContact() {
        super("transverse-contact", "Transverse contact ratio");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Mated mated) {
        double ratio = mated.least(InvolutePair::transverseContactRatio);
        return judging.atLeast(
                Figure.of("the transverse contact ratio", ratio, Unit.RATIO), LEAST, Limit.GEOMETRY + " (ISO 21771)");
    }
}
