package org.layshaft.kb.layout;

import java.util.Optional;

/**
 * A friction clutch: between the engine and the box, or inside, in front of one of two input shafts.
 *
 * @param drivenBy id of the shaft that drives it; empty for the engine
 * @param drives id of the shaft that it drives
 */
public record Clutch(Named named, Optional<String> drivenBy, String drives) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.CLUTCH;
    }
}
