package org.layshaft.kb.layout;

import java.util.List;

/**
 * A shaft and what sits along it.
 *
 * @param held whether it stands still in the case, as an idler's spindle does
 * @param along ids of the gears, sleeves and bearings on it, from the front to the rear
 */
public record Shaft(Named named, boolean held, List<String> along) implements Part {
    public Shaft {
        along = List.copyOf(along);
    }

    @Override
    public PartKind kind() {
        return PartKind.SHAFT;
    }
}
