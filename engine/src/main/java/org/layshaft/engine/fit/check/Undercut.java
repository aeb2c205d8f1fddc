package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The rack that cuts the teeth does not hollow them out at the root. */
public final class Undercut extends ParallelReckoning {
    public Undercut() {
        super("undercut", "Undercut");
    }

    @Override
    Optional<Judgement> reckon(Judging judging, Held one, Held other) {
        InvoluteGear first = Teeth.rooted(one);
        InvoluteGear second = Teeth.rooted(other);
        if (judging.isUntold()) {
            return judging.untold();
        }
        boolean firstIsWorse = toSpare(first) <= toSpare(second);
        Figure ofOne = Figure.of("the profile shift of " + one.name(), first.shift(), Unit.RATIO);
        Figure ofOther = Figure.of("the profile shift of " + other.name(), second.shift(), Unit.RATIO);
        return judging.between(
                List.of(ofOne, ofOther),
                firstIsWorse ? ofOne : ofOther,
                (firstIsWorse ? first : second).smallestShift().orElse(Double.NEGATIVE_INFINITY),
                Double.POSITIVE_INFINITY,
                Limit.GEOMETRY + " (ISO 21771), for the rack of ISO 53");
    }

    /** No rack cuts a ring. */
    private static double toSpare(InvoluteGear gear) {
        return gear.smallestShift().isPresent()
                ? gear.shift() - gear.smallestShift().getAsDouble()
                : Double.POSITIVE_INFINITY;
    }
}
