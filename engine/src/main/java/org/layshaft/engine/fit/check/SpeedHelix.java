package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The helices of the speed drive come to the angle between its shafts: a right angle, or none. */
public final class SpeedHelix extends Check {
    private static final double ACROSS_DEG = 90;

    public SpeedHelix() {
        super("speed-helix", "Helix of the speed drive", MeetingKind.SPEED_DRIVE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        double driving = leftDeg(judging.one());
        double driven = leftDeg(judging.other());
        Figure between = Figure.of("the angle between the shafts", Math.abs(driving + driven), Unit.DEG);
        double needed = between.number() < ACROSS_DEG / 2 ? 0 : ACROSS_DEG;
        return judging.between(
                List.of(
                        Figure.of(judging.one().name(), Math.abs(driving), Unit.DEG),
                        Figure.of(judging.other().name(), Math.abs(driven), Unit.DEG),
                        between),
                between,
                needed,
                needed,
                Limit.GEOMETRY + "; drives for a speed reading stand across or alongside");
    }

    /** A right-hand helix counts against a left-hand one. */
    private static double leftDeg(Held gear) {
        double helixDeg = gear.number(FactName.HELIX_DEG);
        if (helixDeg == 0 || Double.isNaN(helixDeg)) {
            return helixDeg;
        }
        return gear.word(FactName.HAND).equals("left") ? helixDeg : -helixDeg;
    }
}
