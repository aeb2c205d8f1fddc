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

/** The spirals of a bevel or hypoid pair wind opposite ways. */
public final class SpiralHand extends BevelCheck {
    private static final Limit OPPOSITE = new Limit("must be opposite", Limit.GEOMETRY);
    private static final Limit BOTH = new Limit("must both be straight or both be spiral", Limit.GEOMETRY);

    public SpiralHand() {
        super("spiral-hand", "Hand of the spiral");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        double spiralOfOne = one.number(FactName.HELIX_DEG);
        double spiralOfOther = other.number(FactName.HELIX_DEG);
        if (judging.isUntold()) {
            return judging.untold();
        }
        if (spiralOfOne == 0 && spiralOfOther == 0) {
            return Optional.empty();
        }
        if (spiralOfOne == 0 || spiralOfOther == 0) {
            return judging.holds(
                    false,
                    List.of(
                            Figure.of(one.name(), spiralOfOne, Unit.DEG),
                            Figure.of(other.name(), spiralOfOther, Unit.DEG)),
                    BOTH);
        }
        String handOfOne = one.word(FactName.HAND);
        String handOfOther = other.word(FactName.HAND);
        return judging.holds(
                !handOfOne.equals(handOfOther),
                List.of(Figure.of(one.name(), handOfOne), Figure.of(other.name(), handOfOther)),
                OPPOSITE);
    }
}
