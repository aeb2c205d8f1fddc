package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** The needles run on the shaft without play to speak of. */
public final class NeedlesInside extends NeedleCheck {
    public NeedlesInside() {
        super("needles-inside", "Needles on the shaft");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat) {
        double nominalMm = needles.numberOr(FactName.NEEDLES_INSIDE_MM, Double.NaN);
        return new Play(needles, FactName.NEEDLES_INSIDE_MM, seat, FactName.SEAT_MM)
                .within(judging, 0, -Iso286.H5_SHAFT_LEAST.mm(nominalMm), "a journal to ISO 286 h5, from memory");
    }
}
