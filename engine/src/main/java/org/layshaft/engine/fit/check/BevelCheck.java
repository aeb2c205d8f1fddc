package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** A check of bevel and hypoid pairs. It says nothing of teeth on parallel shafts. */
abstract class BevelCheck extends Check {
    BevelCheck(String id, String title) {
        super(id, title, MeetingKind.TEETH);
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        Held one = judging.one();
        Held other = judging.other();
        boolean bevel = Forms.bothBevel(one, other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return bevel ? judge(judging, one, other) : Optional.empty();
    }

    /** Both are told to be bevel. */
    abstract Optional<Judgement> judge(Judging judging, Held one, Held other);
}
