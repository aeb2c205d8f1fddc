package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** A gear on a bush, or straight on its shaft, has room for oil, and no more than worn parts are let have. */
public final class BushClearance extends HeldWay {
    /** 0.010 inches. */
    private static final double MOST_MM = 0.254;

    public BushClearance() {
        super("bush-clearance", "Clearance of the bush", MeetingKind.SEAT, Seats.BUSH);
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held seat) {
        double nominalMm = Math.rint(seat.numberOr(FactName.SEAT_MM, Double.NaN));
        return new Play(gear, FactName.SEAT_MM, seat, FactName.SEAT_MM)
                .withinOrNominal(
                        judging,
                        -Iso286.F7_SHAFT_MOST.mm(nominalMm),
                        MOST_MM,
                        "least: ISO 286 H7/f7, from memory; most: wear limit of a gear on its journal, TM 9-2520-246-34-1, table 2-9");
    }
}
