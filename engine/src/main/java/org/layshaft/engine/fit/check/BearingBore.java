package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The bearing sits fast on its journal. A cage of needles has no ring: it runs on the journal itself. */
public final class BearingBore extends Check {
    public BearingBore() {
        super("bearing-bore", "Bore of the bearing", MeetingKind.BEARING_ON_SHAFT);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        FactName bore = bearing.has(FactName.NEEDLES_INSIDE_MM) ? FactName.NEEDLES_INSIDE_MM : FactName.BORE_MM;
        double nominalMm = bearing.numberOr(bore, Double.NaN);
        return new Play(bearing, bore, judging.seat(), FactName.SEAT_MM)
                .within(
                        judging,
                        -Iso286.M6_SHAFT_MOST.mm(nominalMm),
                        -Iso286.J6_SHAFT_LEAST.mm(nominalMm),
                        "journals to ISO 286 from j6 to m6, from memory");
    }
}
