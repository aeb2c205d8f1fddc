package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The pads of the fork run in the groove with some play, and not with too much. */
public final class ForkPlay extends Check {
    private static final double LEAST_MM = 0.05;
    private static final double MOST_MM = 1.0;

    public ForkPlay() {
        super("fork-play", "Play of the fork in its groove", MeetingKind.FORK);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return new Play(judging.other(), FactName.GROOVE_MM, judging.one(), FactName.PAD_MM)
                .within(judging, LEAST_MM, MOST_MM, "workshop manuals: new from 0.05 mm, at most 1.0 mm");
    }
}
