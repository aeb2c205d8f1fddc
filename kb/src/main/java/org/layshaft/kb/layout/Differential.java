package org.layshaft.kb.layout;

import java.util.List;

/**
 * A bevel differential: its case carries the ring gear, its two side gears drive the half-shafts.
 *
 * @param ringGear id of the ring gear
 * @param halfShafts ids of the two half-shafts
 */
public record Differential(Named named, String ringGear, List<String> halfShafts) implements Part {
    public Differential {
        halfShafts = List.copyOf(halfShafts);
    }

    @Override
    public PartKind kind() {
        return PartKind.DIFFERENTIAL;
    }
}
