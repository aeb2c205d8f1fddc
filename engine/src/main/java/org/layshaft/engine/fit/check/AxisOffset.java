package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.FactName;

/** Both gears of a bevel or hypoid pair are made for one offset of the axes, and that is the offset of the axle. */
public final class AxisOffset extends BevelCheck {
    public AxisOffset() {
        super("axis-offset", "Offset of the axes");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        Held was = judging.was(judging.meeting().one());
        Optional<Judgement> pair = judging.same(one, FactName.OFFSET_MM, other, FactName.OFFSET_MM);
        Optional<Judgement> axle = judging.same(one, FactName.OFFSET_MM, was, FactName.OFFSET_MM);
        return pair.filter(judgement -> judgement.outcome() == Outcome.FAILS).isPresent() ? pair : axle;
    }
}
