package org.layshaft.web.asking;

import java.util.List;
import org.layshaft.engine.api.Evidence;

/**
 * What was made of somebody's words for what they noticed.
 *
 * @param unknown words that nothing could be made of
 */
public record SymptomsHeard(Evidence evidence, List<String> unknown) {
    public SymptomsHeard {
        unknown = List.copyOf(unknown);
    }

    /** Whether something was told that was noticed, and nothing was left aside. */
    public boolean isWhole() {
        return unknown.isEmpty() && evidence.seen().findAny().isPresent();
    }

    /** Whether nothing at all was understood. */
    public boolean isNothing() {
        return evidence.observations().isEmpty() && !evidence.afterWork();
    }
}
