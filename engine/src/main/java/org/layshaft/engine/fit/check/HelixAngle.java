package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** On parallel shafts the teeth of both gears slant alike. */
public final class HelixAngle extends ParallelCheck {
    public HelixAngle() {
        super("helix-angle", "Helix angle");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        return judging.same(one, FactName.HELIX_DEG, other, FactName.HELIX_DEG);
    }
}
