package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** A half-shaft reaches as far into the side gear as the one before. */
public final class HalfShaftSplineLength extends Check {
    public HalfShaftSplineLength() {
        super("half-shaft-spline-length", "Length of the spline of the half-shaft", MeetingKind.HALF_SHAFT);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return new Splines(judging.one(), judging.seat())
                .engage(judging, new Splines(judging.was(judging.meeting().one()), Seats.seatThatWas(judging)));
    }
}
