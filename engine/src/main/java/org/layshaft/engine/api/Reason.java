package org.layshaft.engine.api;

import java.util.List;

/**
 * A conclusion, or a fact it rests on.
 *
 * @param rule id of the rule that drew it, {@code drive/tied}; empty for a fact of the layout or of a fault
 * @param says it in words
 * @param from what it rests on
 */
public record Reason(String rule, String says, List<Reason> from) {
    public Reason {
        from = List.copyOf(from);
    }
}
