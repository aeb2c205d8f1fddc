package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.FactName;

/** Each gear of a bevel or hypoid pair stands as far from the crossing of the axes as the one that was there. */
public final class MountingDistance extends BevelCheck {
    public MountingDistance() {
        super("mounting-distance", "Mounting distance");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        Meeting mesh = judging.meeting();
        Optional<Judgement> ofOne = asBefore(judging, one, mesh.one());
        Optional<Judgement> ofOther = asBefore(judging, other, mesh.other());
        return ofOne.filter(judgement -> judgement.outcome() == Outcome.FAILS).isPresent() ? ofOne : ofOther;
    }

    private static Optional<Judgement> asBefore(Judging judging, Held gear, String place) {
        return judging.same(gear, FactName.MOUNTING_MM, judging.was(place), FactName.MOUNTING_MM);
    }
}
