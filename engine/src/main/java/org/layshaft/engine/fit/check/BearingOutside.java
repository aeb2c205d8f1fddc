package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The bearing fits the bore that the case, or the shaft around it, has for it. */
public final class BearingOutside extends Check {
    /** ISO 286, J7 and H7 over 80 up to 120 mm. */
    private static final double MOST_TIGHT_MM = 0.013;

    private static final double MOST_LOOSE_MM = 0.035;

    public BearingOutside() {
        super("bearing-outside", "Outside of the bearing", MeetingKind.BEARING_IN_CASE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        FactName outside = bearing.has(FactName.NEEDLES_OUTSIDE_MM) ? FactName.NEEDLES_OUTSIDE_MM : FactName.OUTSIDE_MM;
        return new Play(judging.seat(), FactName.SEAT_MM, bearing, outside)
                .within(judging, -MOST_TIGHT_MM, MOST_LOOSE_MM, "bores to ISO 286 from J7 to H7, at 80 to 120 mm");
    }
}
