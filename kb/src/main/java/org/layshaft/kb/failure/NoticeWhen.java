package org.layshaft.kb.failure;

import java.util.Locale;

/** When a failure makes itself noticed: a question put to the computed motion, never a list of gears. */
public enum NoticeWhen {
    /** Under load, in a gear that this part engages. */
    PULLING_IN_ITS_GEAR,
    /** On the way into a gear that this part engages. */
    SHIFTING_INTO_ITS_GEAR,
    /** On the way into any gear. */
    SHIFTING_INTO_ANY_GEAR,
    /** At the lever, as it is moved for a gear that this part engages, whether or not that gear is left. */
    MOVING_ITS_LEVER,
    /** On the way into a gear that has no blocking ring to bring the speeds together. */
    SHIFTING_INTO_A_GEAR_WITHOUT_RING,
    /** While the part turns. */
    WHILE_IT_TURNS,
    /** While the gear turns and another is in mesh with it, whether or not that mesh still carries. */
    WHILE_IT_TURNS_IN_MESH,
    /** While the part turns relative to the shaft it sits on. */
    WHILE_IT_TURNS_ON_ITS_SHAFT,
    /** While the part carries power. */
    WHILE_IT_CARRIES,
    /** In a gear that this failure leaves without drive; not where another gear drives in its place. */
    WHERE_IT_TAKES_THE_DRIVE,
    /** Where this failure makes the box drive in neutral. */
    WHERE_NEUTRAL_DRIVES,
    /** Where this failure locks the box. */
    WHERE_IT_LOCKS;

    /** As written in packs: {@code while-it-turns}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
