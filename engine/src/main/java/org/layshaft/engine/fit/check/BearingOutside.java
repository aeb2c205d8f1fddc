package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The bearing fits the bore that the case, or the shaft around it, has for it. */
public final class BearingOutside extends Check {
    public BearingOutside() {
        super("bearing-outside", "Outside of the bearing", MeetingKind.BEARING_IN_CASE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        FactName outside = bearing.has(FactName.NEEDLES_OUTSIDE_MM) ? FactName.NEEDLES_OUTSIDE_MM : FactName.OUTSIDE_MM;
        double nominalMm = bearing.numberOr(outside, Double.NaN);
        return new Play(judging.seat(), FactName.SEAT_MM, bearing, outside)
                .within(
                        judging,
                        Iso286.J7_BORE_LEAST.mm(nominalMm),
                        Iso286.H7_BORE_MOST.mm(nominalMm),
                        "bores to ISO 286 from J7 to H7, from memory");
    }
}
