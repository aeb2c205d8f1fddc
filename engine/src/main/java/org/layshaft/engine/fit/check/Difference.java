package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** One number of both sides, and how far the two are from each other. */
record Difference(Held one, double ofOne, Held other, double ofOther, Unit unit) {

    static Difference of(Judging judging, FactName fact) {
        Held one = judging.one();
        Held other = judging.other();
        return new Difference(
                one, one.number(fact), other, other.number(fact), fact.unit().orElse(Unit.RATIO));
    }

    Optional<Judgement> atMost(Judging judging, double most, String source) {
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure difference = Figure.of("the difference", Math.abs(ofOne - ofOther), unit);
        return judging.between(
                List.of(Figure.of(one.name(), ofOne, unit), Figure.of(other.name(), ofOther, unit), difference),
                difference,
                Double.NEGATIVE_INFINITY,
                most,
                source);
    }
}
