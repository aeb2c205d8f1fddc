package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.kb.catalogue.FactName;

/** With its axes offset, a pair of the other hands wants its pinion on the other side of the crown's axis. */
public final class HypoidHand extends BevelCheck {
    private static final Limit AS_BEFORE =
            new Limit("must be the hand of the one that was there", Limit.GEOMETRY + ": the offset is to one side");

    public HypoidHand() {
        super("hypoid-hand", "Hand of a hypoid pair");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        if (one.number(FactName.OFFSET_MM) == 0) {
            return Optional.empty();
        }
        Held was = judging.was(judging.meeting().one());
        String hand = one.word(FactName.HAND);
        String handBefore = was.word(FactName.HAND);
        return judging.holds(
                hand.equals(handBefore),
                List.of(Figure.of(one.name(), hand), Figure.of(was.name(), handBefore)),
                AS_BEFORE);
    }
}
