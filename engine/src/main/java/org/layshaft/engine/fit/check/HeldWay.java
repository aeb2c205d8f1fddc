package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** A check of what sits on a shaft in one certain way. It says nothing of what is held otherwise. */
abstract class HeldWay extends Check {
    private final String way;

    HeldWay(String id, String title, MeetingKind meeting, String way) {
        super(id, title, meeting);
        this.way = way;
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        Held part = judging.one();
        boolean concerned = Seats.isHeldBy(part, way);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return concerned ? judge(judging, part, judging.seat()) : Optional.empty();
    }

    /** The part is told to be held in this way. */
    abstract Optional<Judgement> judge(Judging judging, Held part, Held seat);
}
