package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** As much of the spline engages as did before. Where what was there was not splined there is nothing to hold it to. */
abstract class SplineLength extends HeldWay {
    SplineLength(String id, String title, MeetingKind meeting) {
        super(id, title, meeting, Seats.SPLINE);
    }

    @Override
    final Optional<Judgement> judge(Judging judging, Held part, Held seat) {
        Held was = judging.was(judging.meeting().one());
        boolean wasSplined = Seats.isHeldBy(was, Seats.SPLINE);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return wasSplined
                ? new Splines(seat, part).engage(judging, new Splines(Seats.seatThatWas(judging), was))
                : Optional.empty();
    }
}
