package org.layshaft.engine.suspects;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.layshaft.kb.failure.Situation;

/** Situations that people do not keep apart when they tell what happened: "no drive, pulling" is said of taking it up. */
final class Near {
    private static final List<Set<Situation>> GROUPS = List.of(
            EnumSet.of(
                    Situation.SELECTED,
                    Situation.PULLING,
                    Situation.OVERRUN,
                    Situation.FLOATING,
                    Situation.ON_AND_OFF,
                    Situation.IN_A_BEND),
            EnumSet.of(Situation.AT_THE_LEVER, Situation.SHIFTING_INTO, Situation.SHIFTING_OUT_OF),
            EnumSet.of(Situation.NEUTRAL_PEDAL_UP, Situation.NEUTRAL_PEDAL_DOWN, Situation.ROLLING_IN_NEUTRAL),
            EnumSet.of(Situation.AT_REST, Situation.PUSHED),
            EnumSet.of(Situation.IN_GEAR_PEDAL_DOWN));

    private Near() {}

    /** This situation and those that it is easily taken for. */
    static Set<Situation> to(Situation situation) {
        return GROUPS.stream()
                .filter(group -> group.contains(situation))
                .findFirst()
                .orElseThrow();
    }
}
