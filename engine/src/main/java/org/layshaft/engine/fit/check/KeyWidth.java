package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The keys lie in the slots of the hub with a little play. */
public final class KeyWidth extends Check {
    private static final double LEAST_MM = 0.02;
    private static final double MOST_MM = 0.4;

    public KeyWidth() {
        super("key-width", "Width of the keys", MeetingKind.KEY);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return new Play(judging.other(), FactName.HUB_SLOT_MM, judging.one(), FactName.KEY_MM)
                .within(judging, LEAST_MM, MOST_MM, Limit.COMMON_PRACTICE);
    }
}
