package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** What is pressed on a shaft is bored no wider than the shaft is thick there, and not so tight that it bursts. */
abstract class PressFit extends HeldWay {
    PressFit(String id, String title, MeetingKind meeting) {
        super(id, title, meeting, Seats.PRESS);
    }

    @Override
    final Optional<Judgement> judge(Judging judging, Held part, Held seat) {
        double nominalMm = Math.rint(seat.numberOr(FactName.SEAT_MM, Double.NaN));
        double leastTightMm = Iso286.P6_SHAFT_LEAST.mm(nominalMm) - Iso286.H7_BORE_MOST.mm(nominalMm);
        return new Play(part, FactName.SEAT_MM, seat, FactName.SEAT_MM)
                .withinOrNominal(
                        judging,
                        -Iso286.U6_SHAFT_MOST.mm(nominalMm),
                        -leastTightMm,
                        "ISO 286, from H7/p6 to H7/u6, from memory");
    }
}
