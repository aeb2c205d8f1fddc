package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** How long things are along a shaft. */
final class Lengths {
    private Lengths() {}

    /** What sits somewhere is no longer than the seat for it. */
    static Optional<Judgement> noLonger(
            Judging judging, Held part, FactName lengthOfPart, Held seat, FactName seatLength) {
        Figure length = Figure.of(part.name(), part.number(lengthOfPart), Unit.MM);
        Figure seatLong = Figure.of(seat.name(), seat.number(seatLength), Unit.MM);
        return judging.between(
                List.of(length, seatLong), length, Double.NEGATIVE_INFINITY, seatLong.number(), Limit.GEOMETRY);
    }
}
