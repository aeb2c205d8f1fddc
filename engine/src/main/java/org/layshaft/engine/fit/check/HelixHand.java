package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.kb.catalogue.FactName;

/** Helical teeth of two external gears wind opposite ways, those of a gear inside a ring the same way. */
public final class HelixHand extends ParallelCheck {
    private static final Limit OPPOSITE = new Limit("must be opposite", Limit.GEOMETRY);
    private static final Limit ALIKE =
            new Limit("must be the same where one gear runs inside the other", Limit.GEOMETRY);

    public HelixHand() {
        super("helix-hand", "Hand of the helix");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        double helixOfOne = one.number(FactName.HELIX_DEG);
        double helixOfOther = other.number(FactName.HELIX_DEG);
        if (judging.isUntold()) {
            return judging.untold();
        }
        if (helixOfOne == 0 || helixOfOther == 0) {
            return Optional.empty();
        }
        String handOfOne = one.word(FactName.HAND);
        String handOfOther = other.word(FactName.HAND);
        boolean internal = Forms.anyInternal(one, other);
        return judging.holds(
                handOfOne.equals(handOfOther) == internal,
                List.of(Figure.of(one.name(), handOfOne), Figure.of(other.name(), handOfOther)),
                internal ? ALIKE : OPPOSITE);
    }
}
