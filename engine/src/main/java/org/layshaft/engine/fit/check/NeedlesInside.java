package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** The needles run on the shaft without play to speak of. */
public final class NeedlesInside extends NeedleCheck {
    /** ISO 286, h5 over 30 up to 50 mm. */
    private static final double MOST_UNDER_MM = 0.011;

    public NeedlesInside() {
        super("needles-inside", "Needles on the shaft");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat) {
        return new Play(needles, FactName.NEEDLES_INSIDE_MM, seat, FactName.SEAT_MM)
                .within(judging, 0, MOST_UNDER_MM, "a journal to ISO 286 h5, at 30 to 50 mm");
    }
}
