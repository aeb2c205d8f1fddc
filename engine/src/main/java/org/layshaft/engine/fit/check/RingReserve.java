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

/** The ring, pressed home on the cone of this gear, has something left to wear before it touches the gear. */
public final class RingReserve extends Check {
    private static final double LEAST_MM = 0.5;

    public RingReserve() {
        super("ring-reserve", "Reserve of the ring", MeetingKind.CONE);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held gear = judging.one();
        Held ring = judging.other();
        double statedMm = ring.number(FactName.RESERVE_MM);
        double thickerMm = gear.number(FactName.CONE_MM) - ring.number(FactName.CONE_MM);
        double halfAngleDeg = ring.number(FactName.CONE_DEG);
        if (judging.isUntold()) {
            return judging.untold();
        }
        // a thicker cone stops the ring earlier, by half of the difference over the slope
        Figure here = Figure.of(
                "the reserve on this gear", statedMm + thickerMm / 2 / Math.tan(Math.toRadians(halfAngleDeg)), Unit.MM);
        return judging.between(
                List.of(Figure.of(ring.name(), statedMm, Unit.MM), here),
                here,
                LEAST_MM,
                Double.POSITIVE_INFINITY,
                "worn out at 0.5 mm in the workshop manuals of several boxes");
    }
}
