package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The ring comes to rest on the cone of the gear where it should. */
public final class ConeDiameter extends Check {
    private static final double OFF_MM = 0.05;

    public ConeDiameter() {
        super("cone-diameter", "Diameter of the cone", MeetingKind.CONE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return Difference.of(judging, FactName.CONE_MM).atMost(judging, OFF_MM, Limit.COMMON_PRACTICE);
    }
}
