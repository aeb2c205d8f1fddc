package org.layshaft.engine.fit.check;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.involute.Interference;
import org.layshaft.kb.catalogue.FactName.Unit;

/** No tip runs where the mate's flank is no involute any more, and the tips of pinion and ring pass each other. */
public final class ToothInterference extends PairReckoning {
    public ToothInterference() {
        super("interference", "Interference");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Mated mated) {
        Optional<Interference> worst = Stream.concat(
                        mated.near().interference().stream(), mated.far().interference().stream())
                .filter(found -> !isClearance(found))
                .max(Comparator.comparingDouble(ToothInterference::byMm));
        Figure reach = Figure.of(
                "how far teeth reach into each other beyond the involutes",
                worst.map(ToothInterference::byMm).orElse(0.0),
                Unit.MM);
        Optional<Judgement> judgement = judging.atMost(reach, 0, Limit.GEOMETRY + " (ISO 21771)");
        return worst.isEmpty() ? judgement : judgement.map(told -> told.remarking(where(judging, worst.get())));
    }

    private static boolean isClearance(Interference found) {
        return switch (found.kind()) {
            case TIP_OF_FIRST_IN_ROOT, TIP_OF_SECOND_IN_ROOT -> true;
            case FILLET_OF_FIRST, FILLET_OF_SECOND, TIPS_CROSS -> false;
        };
    }

    private static double byMm(Interference found) {
        return Math.abs(found.actualMm() - found.limitMm());
    }

    private static String where(Judging judging, Interference found) {
        return switch (found.kind()) {
            case FILLET_OF_FIRST ->
                "The tips of %s run in the fillets of %s."
                        .formatted(judging.other().name(), judging.one().name());
            case FILLET_OF_SECOND ->
                "The tips of %s run in the fillets of %s."
                        .formatted(judging.one().name(), judging.other().name());
            case TIPS_CROSS -> "The tips of pinion and ring catch on each other away from the line of centres.";
            case TIP_OF_FIRST_IN_ROOT, TIP_OF_SECOND_IN_ROOT -> "";
        };
    }
}
