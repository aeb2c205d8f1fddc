package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** What sits plainly on a shaft is no longer than its seat there. Of what is splined the spline counts. */
abstract class SeatLength extends Check {
    SeatLength(String id, String title, MeetingKind meeting) {
        super(id, title, meeting);
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        Held part = judging.one();
        boolean splined = Seats.isHeldBy(part, Seats.SPLINE);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return splined
                ? Optional.empty()
                : Lengths.noLonger(judging, part, FactName.SEAT_LENGTH_MM, judging.seat(), FactName.SEAT_LENGTH_MM);
    }
}
