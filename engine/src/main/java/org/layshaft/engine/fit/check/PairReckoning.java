package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.involute.InvoluteGear;

/** A check of two whole gears in mesh, wherever the case's tolerance lets their axes stand. */
abstract class PairReckoning extends ParallelReckoning {
    PairReckoning(String id, String title) {
        super(id, title);
    }

    @Override
    final Optional<Judgement> reckon(Judging judging, Held one, Held other) {
        InvoluteGear first = Teeth.whole(one);
        InvoluteGear second = Teeth.whole(other);
        Axes axes = Axes.asked(judging);
        askMore(one, other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return Mated.of(first, second, axes).flatMap(mated -> judge(judging, mated));
    }

    /** Asks for whatever else the check needs to know. */
    void askMore(Held one, Held other) {}

    /** Nothing is missing. */
    abstract Optional<Judgement> judge(Judging judging, Mated mated);
}
