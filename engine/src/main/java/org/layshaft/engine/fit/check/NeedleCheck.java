package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;

/** A check of the needles between a gear and its shaft. */
abstract class NeedleCheck extends HeldWay {
    private static final String PLACE = "-needles";

    NeedleCheck(String id, String title) {
        super(id, title, MeetingKind.SEAT, Seats.NEEDLES);
    }

    @Override
    final Optional<Judgement> judge(Judging judging, Held gear, Held seat) {
        return judge(judging, gear, judging.at(judging.meeting().one() + PLACE), seat);
    }

    abstract Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat);
}
