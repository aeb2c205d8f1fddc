package org.layshaft.engine.suspects;

import java.util.List;
import org.layshaft.engine.symptom.Shown;
import org.layshaft.kb.failure.FailureMode;

/**
 * Two faults at once, with everything told.
 *
 * @param shown what they show together
 * @param standing the lower, the higher they rank
 */
record Pair(Way one, Way other, Shown shown, Assessment assessment, int standing) {

    List<FailureMode> modes() {
        return List.of(one.entry().mode(), other.entry().mode());
    }
}
