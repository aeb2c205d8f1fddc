package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** A check of teeth on parallel shafts. It says nothing of bevel gears. */
abstract class ParallelCheck extends Check {
    ParallelCheck(String id, String title) {
        super(id, title, MeetingKind.TEETH);
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        Held one = judging.one();
        Held other = judging.other();
        boolean bevel = Forms.anyBevel(one, other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return bevel ? Optional.empty() : judge(judging, one, other);
    }

    /** The form of both is told, and neither is bevel. */
    abstract Optional<Judgement> judge(Judging judging, Held one, Held other);
}
