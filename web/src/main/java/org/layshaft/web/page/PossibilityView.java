package org.layshaft.web.page;

import java.util.List;
import java.util.function.Function;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Verdict;
import org.layshaft.web.desk.Differing;

/**
 * One way things may be.
 *
 * @param says what is supposed here
 */
record PossibilityView(String says, MarkView mark, String verdict, List<String> notices, List<ReasonView> because) {

    /** Empty where it does not matter which of them holds. */
    static List<PossibilityView> all(
            List<Possibility> possibilities,
            Function<Verdict, String> wording,
            Function<List<Notice>, List<String>> noticed) {
        return Differing.among(possibilities).stream()
                .map(possibility -> new PossibilityView(
                        possibility.says(),
                        MarkView.of(possibility.verdict()),
                        wording.apply(possibility.verdict()),
                        noticed.apply(possibility.notices()),
                        ReasonView.all(possibility.because())))
                .toList();
    }

    public boolean hasNotices() {
        return !notices.isEmpty();
    }
}
