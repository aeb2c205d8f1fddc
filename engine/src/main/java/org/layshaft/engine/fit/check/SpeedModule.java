package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The two gears of the speed drive have teeth of one size, square to the teeth. */
public final class SpeedModule extends Check {
    private static final Limit SAME = new Limit("must be the same", Limit.GEOMETRY);

    public SpeedModule() {
        super("speed-module", "Module of the speed drive", MeetingKind.SPEED_DRIVE);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held driving = judging.one();
        Held driven = judging.other();
        double first = NormalModule.moduleMm(driving);
        double second = NormalModule.moduleMm(driven);
        return judging.holds(
                Math.abs(first - second) <= Judging.ROUNDING,
                List.of(Figure.of(driving.name(), first, Unit.MM), Figure.of(driven.name(), second, Unit.MM)),
                SAME);
    }
}
