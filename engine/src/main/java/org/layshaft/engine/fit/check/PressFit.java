package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** What is pressed on a shaft is bored no wider than the shaft is thick there, and not so tight that it bursts. */
abstract class PressFit extends HeldWay {
    /** ISO 286, H7/p6 over 30 up to 50 mm. */
    private static final double LEAST_TIGHT_MM = 0.001;

    /** ISO 286, H7/u6 over 40 up to 50 mm. */
    private static final double MOST_TIGHT_MM = 0.086;

    PressFit(String id, String title, MeetingKind meeting) {
        super(id, title, meeting, Seats.PRESS);
    }

    @Override
    final Optional<Judgement> judge(Judging judging, Held part, Held seat) {
        return new Play(part, FactName.SEAT_MM, seat, FactName.SEAT_MM)
                .withinOrNominal(
                        judging, -MOST_TIGHT_MM, -LEAST_TIGHT_MM, "ISO 286, from H7/p6 to H7/u6, at 40 to 50 mm");
    }
}
