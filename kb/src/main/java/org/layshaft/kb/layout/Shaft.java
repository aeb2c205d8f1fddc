package org.layshaft.kb.layout;

import java.util.List;
import java.util.Optional;

/**
 * A shaft and what sits along it.
 *
 * @param held whether it stands still in the case, as an idler's spindle does
 * @param carriedBy id of the shaft that carries it round, as a planet's spindle is carried; empty for one that stays in its place
 * @param count how many alike there are; the layout tells of one of them
 * @param along ids of the gears, sleeves and bearings on it, from the front to the rear
 */
public record Shaft(Named named, boolean held, Optional<String> carriedBy, int count, List<String> along)
        implements Part {
    public Shaft {
        along = List.copyOf(along);
    }

    @Override
    public PartKind kind() {
        return PartKind.SHAFT;
    }
}
