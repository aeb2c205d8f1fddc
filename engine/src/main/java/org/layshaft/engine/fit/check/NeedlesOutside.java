package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.kb.catalogue.FactName;

/** The gear runs on the needles without play to speak of. */
public final class NeedlesOutside extends NeedleCheck {
    /** ISO 286, G6 over 30 up to 50 mm. */
    private static final double MOST_OVER_MM = 0.025;

    public NeedlesOutside() {
        super("needles-outside", "Gear on the needles");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held gear, Held needles, Held seat) {
        return new Play(gear, FactName.SEAT_MM, needles, FactName.NEEDLES_OUTSIDE_MM)
                .within(judging, 0, MOST_OVER_MM, "a bore to ISO 286 G6, at 30 to 50 mm");
    }
}
