package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** With the overlap that a helix gives, there is contact to spare. */
public final class TotalContact extends PairReckoning {
    private static final double LEAST = 1.2;

    public TotalContact() {
        super("total-contact", "Total contact ratio");
    }

    @Override
    void askMore(Held one, Held other) {
        if (isHelical(one) && isHelical(other)) {
            one.number(FactName.FACE_MM);
            other.number(FactName.FACE_MM);
        }
    }

    /** How wide straight teeth are plays no part. */
    private static boolean isHelical(Held gear) {
        return gear.number(FactName.HELIX_DEG) > 0;
    }

    @Override
    Optional<Judgement> judge(Judging judging, Mated mated) {
        double faceMm = Math.min(
                judging.one().numberOr(FactName.FACE_MM, 0), judging.other().numberOr(FactName.FACE_MM, 0));
        Figure transverse = Figure.of(
                "the transverse contact ratio", mated.least(InvolutePair::transverseContactRatio), Unit.RATIO);
        Figure overlap = Figure.of("the overlap ratio", mated.near().overlapRatio(faceMm), Unit.RATIO);
        Figure total = Figure.of("the total contact ratio", transverse.number() + overlap.number(), Unit.RATIO);
        return judging.between(
                List.of(transverse, overlap, total), total, LEAST, Double.POSITIVE_INFINITY, Limit.COMMON_PRACTICE);
    }
}
