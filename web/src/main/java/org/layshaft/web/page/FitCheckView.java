package org.layshaft.web.page;

import java.util.Comparator;
import java.util.List;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Missing;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.web.desk.CheckWording;

/**
 * What one check says.
 *
 * @param href to its explanation
 * @param where the places that meet
 * @param found the figures; what is missing where it cannot be told
 * @param limit with its source; empty where it cannot be told
 * @param missed by how much it fails, and what there is to remark
 */
record FitCheckView(
        String title,
        String href,
        String where,
        List<String> found,
        String limit,
        String source,
        MarkView mark,
        String verdict,
        String outcome,
        String missed,
        String remark) {
    /** Those that fail first, and then those that cannot be told. */
    private static final List<Outcome> WORST_FIRST = List.of(Outcome.FAILS, Outcome.UNTOLD, Outcome.HOLDS);

    static List<FitCheckView> all(List<Judgement> judgements, Fitted fitted) {
        return judgements.stream()
                .sorted(Comparator.comparing(judgement -> WORST_FIRST.indexOf(judgement.outcome())))
                .map(judgement -> of(judgement, fitted))
                .toList();
    }

    private static FitCheckView of(Judgement judgement, Fitted fitted) {
        boolean untold = judgement.isUntold();
        FitVerdict like =
                untold ? FitVerdict.CANNOT_BE_TOLD : judgement.fails() ? FitVerdict.DOES_NOT_FIT : FitVerdict.FITS;
        return new FitCheckView(
                judgement.check().title(),
                "/fit/check/" + judgement.check().id(),
                CheckWording.where(judgement.meeting(), fitted),
                untold
                        ? judgement.missing().stream().map(Missing::words).toList()
                        : judgement.figures().stream().map(CheckWording::of).toList(),
                untold ? "" : judgement.limit().words(),
                untold ? "" : judgement.limit().source(),
                MarkView.of(like),
                MarkView.verdict(like),
                CheckWording.of(judgement.outcome()),
                CheckWording.missed(judgement),
                judgement.remark());
    }
}
