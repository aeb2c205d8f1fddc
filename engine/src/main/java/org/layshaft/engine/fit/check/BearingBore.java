package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The bearing sits fast on its journal. A cage of needles has no ring: it runs on the journal itself. */
public final class BearingBore extends Check {
    /** ISO 286, m6 and j6 over 30 up to 50 mm. */
    private static final double MOST_TIGHT_MM = 0.025;

    private static final double MOST_LOOSE_MM = 0.005;

    public BearingBore() {
        super("bearing-bore", "Bore of the bearing", MeetingKind.BEARING_ON_SHAFT);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        FactName bore = bearing.has(FactName.NEEDLES_INSIDE_MM) ? FactName.NEEDLES_INSIDE_MM : FactName.BORE_MM;
        return new Play(bearing, bore, judging.seat(), FactName.SEAT_MM)
                .within(judging, -MOST_TIGHT_MM, MOST_LOOSE_MM, "journals to ISO 286 from j6 to m6, at 30 to 50 mm");
    }
}
