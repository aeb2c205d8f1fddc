package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** The splined shaft enters its gear. */
public final class GearSpline extends HeldWay {
    public GearSpline() {
        super("gear-spline", "Spline of the gear", MeetingKind.SEAT, Seats.SPLINE);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held seat) {
        return new Splines(seat, gear).enter(judging);
    }
}
