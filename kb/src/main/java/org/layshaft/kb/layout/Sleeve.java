package org.layshaft.kb.layout;

import java.util.Optional;

/**
 * A sleeve, sliding on its hub.
 *
 * @param shaft id of the shaft whose hub it slides on
 * @param hub id of that hub
 * @param rim id of the gear cut on its outside, if any
 */
public record Sleeve(Named named, String shaft, String hub, Optional<String> rim) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.SLEEVE;
    }
}
