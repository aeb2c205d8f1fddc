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

/** The helices of the speed drive come to the angle at which its shafts stand: that of the pair that was there. */
public final class SpeedHelix extends Check {
    private static final double ACROSS_DEG = 90;
    private static final String AS_BEFORE = Limit.GEOMETRY + ", at the angle of the pair that the box was built with";
    private static final String ACROSS_OR_ALONGSIDE =
            Limit.GEOMETRY + "; drives for a speed reading stand across or alongside";

    public SpeedHelix() {
        super("speed-helix", "Helix of the speed drive", MeetingKind.SPEED_DRIVE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held driving = judging.one();
        Held driven = judging.other();
        double ofDriving = leftDeg(driving);
        double ofDriven = leftDeg(driven);
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure between = Figure.of("the angle between the shafts", Math.abs(ofDriving + ofDriven), Unit.DEG);
        List<Figure> figures = List.of(
                Figure.of(driving.name(), Math.abs(ofDriving), Unit.DEG),
                Figure.of(driven.name(), Math.abs(ofDriven), Unit.DEG),
                between);
        Held drivingWas = judging.was(judging.meeting().one());
        Held drivenWas = judging.was(judging.meeting().other());
        boolean told = drivingWas.has(FactName.HELIX_DEG) && drivenWas.has(FactName.HELIX_DEG);
        double nearest = between.number() < ACROSS_DEG / 2 ? 0 : ACROSS_DEG;
        if (!told && Math.abs(between.number() - nearest) > Judging.ROUNDING) {
            return judging.between(figures, between, nearest, nearest, ACROSS_OR_ALONGSIDE);
        }
        double was = Math.abs(leftDeg(drivingWas) + leftDeg(drivenWas));
        return judging.between(figures, between, was, was, AS_BEFORE);
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
