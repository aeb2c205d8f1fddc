package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The pads of the fork reach over the bottom of the groove without touching it. */
public final class GrooveBottom extends Check {
    public GrooveBottom() {
        super("groove-bottom", "Fork over the bottom of its groove", MeetingKind.FORK);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Figure across = Figure.of(judging.one().name(), judging.one().number(FactName.PAD_SPAN_MM), Unit.MM);
        Figure bottom = Figure.of(judging.other().name(), judging.other().number(FactName.GROOVE_BOTTOM_MM), Unit.MM);
        return judging.between(
                List.of(across, bottom), across, bottom.number(), Double.POSITIVE_INFINITY, Limit.GEOMETRY);
    }
}
