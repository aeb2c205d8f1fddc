package org.layshaft.engine.suspects;

import java.util.Optional;
import org.layshaft.engine.api.Observation;

/**
 * Two observations that cannot both be right.
 *
 * @param seen what was noticed
 * @param denied by which it was not
 */
record Contradiction(Observation seen, Observation denied) {

    static Optional<Contradiction> in(Clues clues) {
        return clues.seen().stream()
                .flatMap(seen -> clues.notSeen().stream()
                        .filter(seen::contradicts)
                        .map(denied -> new Contradiction(seen.observation(), denied.observation())))
                .findFirst();
    }
}
