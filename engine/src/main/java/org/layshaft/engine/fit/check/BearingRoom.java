package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The bearing leaves no more room beside it than the one that was there, so that what held that one holds it too. */
public final class BearingRoom extends Check {
    /** ISO 492, by how much a ring of the normal class may be narrower, at bores over 50 up to 80 mm. */
    private static final double NARROWER_MM = 0.15;

    public BearingRoom() {
        super("bearing-room", "Room beside the bearing", MeetingKind.BEARING_IN_CASE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held bearing = judging.one();
        Held seat = judging.seat();
        double bearingMm = widthMm(bearing);
        double seatMm = seat.number(FactName.SEAT_LENGTH_MM);
        if (judging.isUntold()) {
            return judging.untold();
        }
        List<Figure> figures =
                List.of(Figure.of(bearing.name(), bearingMm, Unit.MM), Figure.of(seat.name(), seatMm, Unit.MM));
        double leastMm = seatMm;
        if (bearingMm < seatMm - NARROWER_MM) {
            // a seat may have been longer than its bearing from the first, with a spacer beside it
            Held was = judging.was(judging.meeting().one());
            leastMm = Math.min(seatMm, widthMm(was));
            figures = List.of(figures.get(0), figures.get(1), Figure.of(was.name(), leastMm, Unit.MM));
        }
        return judging.between(
                figures,
                figures.get(0),
                leastMm - NARROWER_MM,
                Double.POSITIVE_INFINITY,
                "the seat, or the bearing that was there, less 0.15 mm: ISO 492, normal class, from memory");
    }

    private static double widthMm(Held bearing) {
        return bearing.number(bearing.has(FactName.NEEDLES_WIDTH_MM) ? FactName.NEEDLES_WIDTH_MM : FactName.WIDTH_MM);
    }
}
