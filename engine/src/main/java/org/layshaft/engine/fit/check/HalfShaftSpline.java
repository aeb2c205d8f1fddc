package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** The half-shaft enters the side gear of its differential. */
public final class HalfShaftSpline extends Check {
    public HalfShaftSpline() {
        super("half-shaft-spline", "Spline of the half-shaft", MeetingKind.HALF_SHAFT);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return new Splines(judging.one(), judging.seat()).enter(judging);
    }
}
