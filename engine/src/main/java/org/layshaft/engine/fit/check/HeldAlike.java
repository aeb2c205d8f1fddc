package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** What sits on a shaft is made to be held as its seat there holds it. */
abstract class HeldAlike extends Check {
    HeldAlike(String id, String title, MeetingKind meeting) {
        super(id, title, meeting);
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        return judging.same(judging.one(), FactName.HELD_BY, judging.seat(), FactName.HELD_BY);
    }
}
