package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The teeth do not bind where the case's tolerance brings the axes to that side. */
public final class CentreDistance extends ParallelReckoning {
    private static final String SOURCE = Limit.GEOMETRY + " (ISO 21771), at the distance and tolerance of the case";

    public CentreDistance() {
        super("centre-distance", "Centre distance");
    }

    @Override
    Optional<Judgement> reckon(Judging judging, Held one, Held other) {
        InvoluteGear first = Teeth.thick(one, gear -> gear.number(FactName.BACKLASH_LEAST_MM));
        InvoluteGear second = Teeth.thick(other, gear -> gear.number(FactName.BACKLASH_LEAST_MM));
        Axes axes = Axes.asked(judging);
        if (judging.isUntold()) {
            return judging.untold();
        }
        if (!Mated.canMesh(first, second)) {
            return Optional.empty();
        }
        // where no distance is without backlash, the teeth of a ring are too thick for any, other teeth too thin to
        // bind
        double bindsMm = InvolutePair.centreMmWithoutBacklash(first, second).orElse(0);
        Figure binds = Figure.of("the distance at which these teeth run without backlash", bindsMm, Unit.MM);
        List<Figure> shown = List.of(
                binds,
                Figure.of("the case", axes.mm(), Unit.MM),
                Figure.of("its tolerance", axes.toleranceMm(), Unit.MM));
        return first.isInternal() || second.isInternal()
                ? judging.between(shown, binds, axes.largestMm(), Double.POSITIVE_INFINITY, SOURCE)
                : judging.between(shown, binds, Double.NEGATIVE_INFINITY, axes.smallestMm(), SOURCE);
    }
}
