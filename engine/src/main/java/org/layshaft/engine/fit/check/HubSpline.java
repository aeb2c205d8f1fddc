package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** The splined shaft enters its hub. */
public final class HubSpline extends HeldWay {
    public HubSpline() {
        super("hub-spline", "Spline of the hub", MeetingKind.HUB, Seats.SPLINE);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held hub, Held seat) {
        return new Splines(seat, hub).enter(judging);
    }
}
