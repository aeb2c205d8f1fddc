package org.layshaft.kb.failure;

import static org.layshaft.kb.failure.Situation.AT_REST;
import static org.layshaft.kb.failure.Situation.AT_THE_LEVER;
import static org.layshaft.kb.failure.Situation.FLOATING;
import static org.layshaft.kb.failure.Situation.IN_A_BEND;
import static org.layshaft.kb.failure.Situation.IN_GEAR_PEDAL_DOWN;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_DOWN;
import static org.layshaft.kb.failure.Situation.NEUTRAL_PEDAL_UP;
import static org.layshaft.kb.failure.Situation.OVERRUN;
import static org.layshaft.kb.failure.Situation.PULLING;
import static org.layshaft.kb.failure.Situation.ROLLING_IN_NEUTRAL;
import static org.layshaft.kb.failure.Situation.SELECTED;
import static org.layshaft.kb.failure.Situation.SHIFTING_INTO;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.layshaft.kb.layout.PartKind;

/**
 * When a failure makes itself noticed: a question put to the computed motion, load and mechanism, never a list of gears.
 * Each holds in some situations unless a mode narrows them.
 */
public enum NoticeWhen {
    /** While the part turns. */
    WHILE_IT_TURNS(OccasionLimits.MOTION, Situations.OF_MOTION),
    /** While the gear turns and another is in mesh with it, whether or not that mesh still carries. */
    WHILE_IT_TURNS_IN_MESH(OccasionLimits.TEETH, Situations.OF_MOTION),
    /** While the part turns relative to the shaft it sits on. */
    WHILE_IT_TURNS_ON_ITS_SHAFT(OccasionLimits.BETWEEN, Situations.OF_MOTION),
    /** While the two things that the part lies between turn unlike: a bearing, a thrust washer, a blocking ring. */
    WHILE_IT_ROLLS(OccasionLimits.BETWEEN, Situations.OF_MOTION),
    /** The same while what it bears carries power. */
    WHILE_IT_ROLLS_UNDER_LOAD(OccasionLimits.BETWEEN_LOADED, Situations.OF_LOAD),
    /** For needles, while the free gear around them turns on them: not while that gear is engaged. */
    WHILE_ITS_GEAR_TURNS_ON_IT(OccasionLimits.UNDER_A_GEAR, Situations.OF_MOTION),
    /** While the part carries power, whichever way. */
    WHILE_IT_CARRIES(OccasionLimits.LOAD, Situations.OF_LOAD),
    /** While teeth of the part carry on the flank that the engine loads when it pulls forward. */
    WHILE_ITS_DRIVE_FLANK_CARRIES(OccasionLimits.FLANKS, Situations.OF_LOAD),
    /** While teeth of the part carry on the other flank. */
    WHILE_ITS_COAST_FLANK_CARRIES(OccasionLimits.FLANKS, Situations.OF_LOAD),
    /** While the two sides of the differential turn unlike. */
    WHILE_ITS_SIDES_DIFFER(OccasionLimits.DIFFERENTIAL, EnumSet.of(IN_A_BEND)),
    /** Where wheels must turn unlike and nothing lets them. */
    WHERE_WHEELS_ARE_TIED(OccasionLimits.BEND, EnumSet.of(IN_A_BEND)),
    /** In a gear that this part engages, while that gear drives. */
    IN_ITS_GEAR(OccasionLimits.ITS_GEARS, EnumSet.of(PULLING)),
    /** At a gear that this part engages, whether or not that gear is left. */
    AT_ITS_GEAR(OccasionLimits.ITS_GEARS, EnumSet.of(AT_THE_LEVER)),
    /** In every gear that drives. */
    IN_ANY_GEAR(OccasionLimits.GEARS, EnumSet.of(PULLING)),
    /** In every gear whose drive goes through teeth, as that of a direct drive does not. */
    IN_A_GEAR_THROUGH_TEETH(OccasionLimits.GEARS, EnumSet.of(PULLING)),
    /** In every gear that has a blocking ring to bring the speeds together. */
    IN_A_GEAR_WITH_RING(OccasionLimits.GEARS, EnumSet.of(SHIFTING_INTO)),
    /** In every gear that has none. */
    IN_A_GEAR_WITHOUT_RING(OccasionLimits.GEARS, EnumSet.of(SHIFTING_INTO)),
    /** Whatever is selected. */
    ALWAYS(OccasionLimits.ANYTHING, EnumSet.of(AT_REST)),
    /** In a gear that this failure leaves without drive; not where another gear drives in its place. */
    WHERE_IT_TAKES_THE_DRIVE(OccasionLimits.GEARS, EnumSet.of(SELECTED)),
    /** The same, where what the speed is read from turns on. */
    WHERE_SPEED_IS_READ_STANDING(OccasionLimits.GEARS, EnumSet.of(SELECTED)),
    /** Where this failure makes the box drive in neutral. */
    WHERE_NEUTRAL_DRIVES(OccasionLimits.NEUTRAL, EnumSet.of(NEUTRAL_PEDAL_UP)),
    /** Where this failure locks the box. */
    WHERE_IT_LOCKS(OccasionLimits.LOCKED, EnumSet.of(SELECTED, NEUTRAL_PEDAL_UP)),
    /** In a gear whose rail nothing keeps apart from another any more: it shows only when two are moved at once. */
    WHERE_TWO_CAN_MEET(OccasionLimits.GEARS, EnumSet.of(SHIFTING_INTO));

    private static final class Situations {
        static final Set<Situation> OF_MOTION = EnumSet.of(
                NEUTRAL_PEDAL_UP,
                NEUTRAL_PEDAL_DOWN,
                IN_GEAR_PEDAL_DOWN,
                PULLING,
                OVERRUN,
                FLOATING,
                IN_A_BEND,
                ROLLING_IN_NEUTRAL);
        static final Set<Situation> OF_LOAD = EnumSet.of(PULLING, OVERRUN, IN_A_BEND);
    }

    private final OccasionLimits limits;
    private final Set<Situation> unlessSaid;

    NoticeWhen(OccasionLimits limits, Set<Situation> unlessSaid) {
        this.limits = limits;
        this.unlessSaid = Set.copyOf(unlessSaid);
    }

    /** The situations in which it is asked where a mode does not say in which. */
    public Set<Situation> unlessSaid() {
        return unlessSaid;
    }

    /** Whether it can be asked of the failure of a part of this kind: a fork has no flanks. */
    public boolean canBeAskedOf(PartKind kind) {
        return limits.canBeAskedOf(kind);
    }

    /** Whether it can ever hold in this situation: nothing carries power where the vehicle stands in neutral. */
    public boolean canHoldIn(Situation situation) {
        return limits.canHoldIn(situation);
    }

    /** As written in packs: {@code while-it-turns}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
