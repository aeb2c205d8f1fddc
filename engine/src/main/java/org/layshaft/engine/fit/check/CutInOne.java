package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** No loose gear goes where the shaft has one cut on it. */
public final class CutInOne extends Check {
    private static final Limit A_SEAT = new Limit("must have a seat for a loose gear there", Limit.GEOMETRY);

    public CutInOne() {
        super("cut-in-one", "Gear cut in one with its shaft", MeetingKind.SEAT);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held seat = judging.seat();
        boolean inOne = seat.has(FactName.TEETH) || Seats.isHeldBy(seat, Seats.IN_ONE);
        return judging.holds(
                !inOne, List.of(Figure.of(seat.name(), inOne ? "cut in one" : seat.word(FactName.HELD_BY))), A_SEAT);
    }
}
