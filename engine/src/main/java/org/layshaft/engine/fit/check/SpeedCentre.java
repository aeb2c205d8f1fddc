package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The pitch cylinders of the speed drive touch where the case holds its axes, or where a turned holder can bring them. */
public final class SpeedCentre extends Check {
    private static final String SOURCE =
            Limit.GEOMETRY + ", at the distance and tolerance of the case that the box was built with";

    public SpeedCentre() {
        super("speed-centre", "Axes of the speed drive", MeetingKind.SPEED_DRIVE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held driving = judging.one();
        Held driven = judging.other();
        double firstMm = pitchRadiusMm(driving);
        double secondMm = pitchRadiusMm(driven);
        Held axes = judging.wasOn(
                Fitted.CASE, judging.meeting().one() + "/" + judging.meeting().other());
        double axesMm = axes.number(FactName.CENTRE_MM);
        double toleranceMm = axes.number(FactName.CENTRE_TOLERANCE_MM);
        if (judging.isUntold()) {
            return judging.untold();
        }
        Figure between = Figure.of("the distance at which they meet", firstMm + secondMm, Unit.MM);
        List<Figure> figures = List.of(
                Figure.of(driving.name() + ", pitch radius", firstMm, Unit.MM),
                Figure.of(driven.name() + ", pitch radius", secondMm, Unit.MM),
                between);
        return judging.between(figures, between, axesMm - toleranceMm, axesMm + toleranceMm, SOURCE);
    }

    /** Drives for a speed reading are cut without a profile shift; where one is told, it sets the axes apart. */
    private static double pitchRadiusMm(Held gear) {
        double helix = Math.toRadians(gear.number(FactName.HELIX_DEG));
        double moduleMm = NormalModule.moduleMm(gear);
        return moduleMm
                * (gear.number(FactName.TEETH) / Math.cos(helix) / 2 + gear.numberOr(FactName.PROFILE_SHIFT, 0));
    }
}
