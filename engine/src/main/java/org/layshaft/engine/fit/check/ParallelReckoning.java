package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;

/** A check that reckons with the involutes of gears on parallel shafts. */
abstract class ParallelReckoning extends ParallelCheck {
    ParallelReckoning(String id, String title) {
        super(id, title);
    }

    @Override
    public final boolean reckons() {
        return true;
    }

    @Override
    final Optional<Judgement> judge(Judging judging, Held one, Held other) {
        return Impossible.fails(judging, () -> reckon(judging, one, other));
    }

    abstract Optional<Judgement> reckon(Judging judging, Held one, Held other);
}
