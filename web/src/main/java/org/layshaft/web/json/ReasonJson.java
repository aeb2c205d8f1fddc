package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Reason;

/**
 * A conclusion, or a fact it rests on.
 *
 * @param rule id of the rule that drew it; empty for a fact
 */
public record ReasonJson(String rule, String says, List<ReasonJson> from) {

    static ReasonJson of(Reason reason) {
        return new ReasonJson(reason.rule(), reason.says(), all(reason.from()));
    }

    static List<ReasonJson> all(List<Reason> reasons) {
        return reasons.stream().map(ReasonJson::of).toList();
    }
}
