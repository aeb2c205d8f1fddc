package org.layshaft.kb.layout;

import java.util.List;
import java.util.Optional;

/**
 * A bevel differential: what drives its case, and the two sides that it shares the turning between.
 *
 * @param ringGear id of the ring gear on its case; empty where a shaft drives the case
 * @param shaft id of the shaft that its case is fixed on; empty where there is a ring gear
 * @param sides ids of the two half-shafts, or of the two shafts, that its side gears turn
 * @param limitedSlip what resists a difference of speed; empty for an open differential
 */
public record Differential(
        Named named,
        Optional<String> ringGear,
        Optional<String> shaft,
        List<String> sides,
        Optional<LimitedSlip> limitedSlip)
        implements Part {
    public Differential {
        sides = List.copyOf(sides);
    }

    @Override
    public PartKind kind() {
        return PartKind.DIFFERENTIAL;
    }
}
