package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** The needles are no wider than the seat on the shaft is long. */
public final class NeedlesWidth extends NeedleCheck {
    public NeedlesWidth() {
        super("needles-width", "Width of the needles");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat) {
        return Lengths.noLonger(judging, needles, FactName.NEEDLES_WIDTH_MM, seat, FactName.SEAT_LENGTH_MM);
    }
}
