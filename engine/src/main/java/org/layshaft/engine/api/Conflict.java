package org.layshaft.engine.api;

import java.util.List;

/**
 * Two gears whose sleeves stand on different rails.
 *
 * @param gears the two gears by name
 * @param outcome what becomes of input and output with both engaged
 * @param preventedBy ids of the interlock pieces that keep the rails apart; empty where nothing does
 * @param canMeet whether both can be engaged at once; uncertain depends on what is not known of a fault
 * @param because why
 */
public record Conflict(
        List<String> gears, Motion.Outcome outcome, List<String> preventedBy, boolean canMeet, List<Reason> because) {
    public Conflict {
        gears = List.copyOf(gears);
        preventedBy = List.copyOf(preventedBy);
        because = List.copyOf(because);
    }
}
