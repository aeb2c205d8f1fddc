package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** Both gears of a mesh have one normal module; a diametral pitch is a module too. */
public final class NormalModule implements FitCheck {
    private static final double MM_PER_INCH = 25.4;

    @Override
    public String id() {
        return "normal-module";
    }

    @Override
    public String title() {
        return "Normal module";
    }

    @Override
    public MeetingKind meeting() {
        return MeetingKind.TEETH;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held one = judging.one();
        Held other = judging.other();
        double first = moduleMm(one);
        double second = moduleMm(other);
        return judging.holds(
                Math.abs(first - second) <= Judging.ROUNDING,
                List.of(Figure.of(one.name(), first, Unit.MM), Figure.of(other.name(), second, Unit.MM)),
                new Limit("must be the same", Limit.GEOMETRY));
    }

    static double moduleMm(Held gear) {
        double pitch = gear.numberOr(FactName.DIAMETRAL_PITCH, Double.NaN);
        return Double.isNaN(pitch) ? gear.number(FactName.MODULE_MM) : MM_PER_INCH / pitch;
    }
}
