package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The bearing does not stand out of its bore. */
public final class BearingWidth extends Check {
    public BearingWidth() {
        super("bearing-width", "Width of the bearing", MeetingKind.BEARING_IN_CASE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        FactName width = bearing.has(FactName.NEEDLES_WIDTH_MM) ? FactName.NEEDLES_WIDTH_MM : FactName.WIDTH_MM;
        return Lengths.noLonger(judging, bearing, width, judging.seat(), FactName.SEAT_LENGTH_MM);
    }
}
