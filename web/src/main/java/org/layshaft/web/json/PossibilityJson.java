package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Possibility;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.desk.Differing;

/**
 * One way things may be.
 *
 * @param says what is supposed here beyond what was told
 * @param faults the faults with everything told
 */
public record PossibilityJson(
        String says, String verdict, List<NoticeJson> notices, List<ReasonJson> because, List<FaultJson> faults) {

    /** Empty where nothing is unknown that matters. */
    static List<PossibilityJson> all(List<Possibility> possibilities, FaultNaming words) {
        return Differing.among(possibilities).stream()
                .map(possibility -> new PossibilityJson(
                        possibility.says(),
                        possibility.verdict().word(),
                        NoticeJson.all(possibility.notices()),
                        ReasonJson.all(possibility.because()),
                        FaultJson.all(possibility.faults(), words)))
                .toList();
    }
}
