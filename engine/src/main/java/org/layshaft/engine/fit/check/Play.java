package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** What is around something and what is inside it, and how much wider the one is than the other. */
record Play(Held around, FactName widthAround, Held inside, FactName widthInside) {

    /** The play must be from least to most; below 0 the inner one is the wider. */
    Optional<Judgement> within(Judging judging, double leastMm, double mostMm, String source) {
        return within(judging, leastMm, mostMm, source, false);
    }

    /** The same, but where one size is stated for both, and neither was measured, it is the nominal size of the fit. */
    Optional<Judgement> withinOrNominal(Judging judging, double leastMm, double mostMm, String source) {
        return within(judging, leastMm, mostMm, source, true);
    }

    private Optional<Judgement> within(
            Judging judging, double leastMm, double mostMm, String source, boolean nominalServes) {
        Fact outer = around.fact(widthAround);
        Fact inner = inside.fact(widthInside);
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure play = Figure.of("the play", outer.number() - inner.number(), Unit.MM);
        boolean nominal = nominalServes && play.number() == 0 && !outer.measured() && !inner.measured();
        return judging.between(
                List.of(Figure.of(around.name(), outer), Figure.of(inside.name(), inner), play),
                play,
                nominal ? Math.min(0, leastMm) : leastMm,
                nominal ? Math.max(0, mostMm) : mostMm,
                source);
    }
}
