package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** What is around something and what is inside it, and how much wider the one is than the other. */
record Play(Held around, FactName widthAround, Held inside, FactName widthInside) {

    /** The play must be from least to most; below 0 the inner one is the wider. */
    Optional<Judgement> within(Judging judging, double leastMm, double mostMm, String source) {
        double aroundMm = around.number(widthAround);
        double insideMm = inside.number(widthInside);
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure play = Figure.of("the play", aroundMm - insideMm, Unit.MM);
        return judging.between(
                List.of(Figure.of(around.name(), aroundMm, Unit.MM), Figure.of(inside.name(), insideMm, Unit.MM), play),
                play,
                leastMm,
                mostMm,
                source);
    }
}
