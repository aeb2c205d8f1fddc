package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The cone is blunt enough for the ring to come off again by itself. */
public final class SelfRelease extends Check {
    public SelfRelease() {
        super("self-release", "Release of the ring", MeetingKind.CONE);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held ring = judging.other();
        double halfAngleDeg = ring.number(FactName.CONE_DEG);
        double friction = ring.number(FactName.FRICTION);
        Figure angle = Figure.of("the half angle of " + ring.name(), halfAngleDeg, Unit.DEG);
        return judging.between(
                List.of(angle, Figure.of("the friction of " + ring.name(), friction, Unit.RATIO)),
                angle,
                Math.toDegrees(Math.atan(friction)),
                Double.POSITIVE_INFINITY,
                "the angle of friction: Socin and Walters, SAE 680008 (1968)");
    }
}
