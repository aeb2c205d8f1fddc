package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** Gear and ring rub over their whole width, not on an edge. */
public final class ConeAngle extends Check {
    private static final double OFF_DEG = 0.05;

    public ConeAngle() {
        super("cone-angle", "Angle of the cone", MeetingKind.CONE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        return Difference.of(judging, FactName.CONE_DEG).atMost(judging, OFF_DEG, Limit.COMMON_PRACTICE);
    }
}
