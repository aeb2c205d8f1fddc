package org.layshaft.engine.swap;

import java.util.Optional;
import org.layshaft.engine.api.Conflict;

/**
 * Two gears whose sleeves stand on different rails, and what keeps them apart.
 *
 * @param before with the names that the gears had
 * @param after with the names that they have now; empty where one of them is none any more
 */
public record ConflictComparison(Conflict before, Optional<Conflict> after) {

    /** Whether the same pieces keep them apart, and both at once would come to the same. */
    public boolean holds() {
        return after.filter(now -> now.outcome() == before.outcome()
                        && now.preventedBy().equals(before.preventedBy())
                        && now.canMeet() == before.canMeet())
                .isPresent();
    }
}
