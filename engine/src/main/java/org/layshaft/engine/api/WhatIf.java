package org.layshaft.engine.api;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Fault;

/**
 * What follows from some faults, or from none.
 *
 * @param layout id of the layout
 * @param faults as told
 * @param gears every gear, first to top and then reverse
 * @param neutral what the lever in neutral does: {@code WORKS} is no drive; its ratio and path are empty
 * @param conflicts every pair of gears on different rails
 * @param cautions what to mind
 */
public record WhatIf(
        String layout,
        List<Fault> faults,
        List<GearVerdict> gears,
        NeutralVerdict neutral,
        List<Conflict> conflicts,
        List<String> cautions) {
    public WhatIf {
        faults = List.copyOf(faults);
        gears = List.copyOf(gears);
        conflicts = List.copyOf(conflicts);
        cautions = List.copyOf(cautions);
    }

    public Optional<GearVerdict> gear(String name) {
        return gears.stream().filter(gear -> gear.gear().equals(name)).findFirst();
    }
}
