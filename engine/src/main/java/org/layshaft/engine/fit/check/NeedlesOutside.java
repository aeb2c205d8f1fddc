package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** The gear runs on the needles without play to speak of. */
public final class NeedlesOutside extends NeedleCheck {
    public NeedlesOutside() {
        super("needles-outside", "Gear on the needles");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat) {
        double nominalMm = needles.numberOr(FactName.NEEDLES_OUTSIDE_MM, Double.NaN);
        return new Play(gear, FactName.SEAT_MM, needles, FactName.NEEDLES_OUTSIDE_MM)
                .within(judging, 0, Iso286.G6_BORE_MOST.mm(nominalMm), "a bore to ISO 286 G6, from memory");
    }
}
