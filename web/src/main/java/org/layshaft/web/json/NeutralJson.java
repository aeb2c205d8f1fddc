package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.web.asking.FaultNaming;

/**
 * What the lever in neutral does.
 *
 * @param verdict {@code works} is no drive; otherwise as for a gear
 */
public record NeutralJson(
        String verdict, List<NoticeJson> notices, List<ReasonJson> because, List<PossibilityJson> possibilities) {

    static NeutralJson of(NeutralVerdict neutral, FaultNaming words) {
        return new NeutralJson(
                neutral.verdict().word(),
                NoticeJson.all(neutral.notices()),
                ReasonJson.all(neutral.because()),
                PossibilityJson.all(neutral.possibilities(), words));
    }
}
