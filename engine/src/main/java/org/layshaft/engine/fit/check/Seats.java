package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** How something sits on a shaft, and the spot on the shaft where it sits. */
final class Seats {
    static final String NEEDLES = "needles";
    static final String BUSH = "bush";
    static final String SPLINE = "spline";
    static final String PRESS = "press";
    static final String IN_ONE = "in-one";

    private Seats() {}

    /** The spot on the part that was at the second place where that at the first sat. */
    static Held seatThatWas(Judging judging) {
        return judging.wasOn(judging.meeting().other(), judging.meeting().one());
    }

    /** Whether the part says that it is held so; noted where it does not say how it is held. */
    static boolean isHeldBy(Held part, String way) {
        return part.word(FactName.HELD_BY).equals(way);
    }
}
