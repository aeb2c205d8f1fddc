package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** A fact of the one side must be the same as one of the other. */
abstract class SameFact extends Check {
    private final FactName ofOne;
    private final FactName ofOther;

    SameFact(String id, String title, MeetingKind meeting, FactName ofOne, FactName ofOther) {
        super(id, title, meeting);
        this.ofOne = ofOne;
        this.ofOther = ofOther;
    }

    @Override
    public final Optional<Judgement> judge(Judging judging) {
        return judging.same(judging.one(), ofOne, judging.other(), ofOther);
    }
}
