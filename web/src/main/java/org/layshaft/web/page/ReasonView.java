package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.api.Reason;

/**
 * A conclusion with what it rests on, or a fact.
 *
 * @param rule id of the rule; empty for a fact
 */
record ReasonView(String says, String rule, List<ReasonView> from) {

    static List<ReasonView> all(List<Reason> reasons) {
        return reasons.stream().map(ReasonView::of).toList();
    }

    static ReasonView of(Reason reason) {
        return new ReasonView(reason.says(), reason.rule(), all(reason.from()));
    }

    public boolean hasFrom() {
        return !from.isEmpty();
    }

    public boolean isFact() {
        return rule.isEmpty();
    }
}
