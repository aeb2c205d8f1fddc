package org.layshaft.kb.failure;

import java.util.EnumSet;
import java.util.Set;
import org.layshaft.kb.layout.PartKind;

/** Of which kinds of part an occasion can be asked, and in which situations it can ever hold. */
enum OccasionLimits {
    /** How something turns. */
    MOTION(Kinds.TURNING, Situations.TURNING),
    /** What teeth run in other teeth. */
    TEETH(Kinds.TOOTHED, Situations.TURNING),
    /** What is loaded. */
    LOAD(Kinds.TURNING, Situations.LOADED),
    /** Which side of teeth is loaded. */
    FLANKS(Kinds.TOOTHED, Situations.LOADED),
    /** What lies between two things. */
    BETWEEN(Kinds.BETWEEN, Situations.TURNING),
    /** The same under load. */
    BETWEEN_LOADED(Kinds.BETWEEN, Situations.LOADED),
    /** What lies under a free gear. */
    UNDER_A_GEAR(EnumSet.of(PartKind.BEARING, PartKind.THRUST_WASHER), Situations.TURNING),
    /** What is in a differential. */
    DIFFERENTIAL(Kinds.OF_DIFFERENTIALS, EnumSet.of(Situation.IN_A_BEND)),
    /** Wheels that turn unlike. */
    BEND(EnumSet.allOf(PartKind.class), EnumSet.of(Situation.IN_A_BEND)),
    /** The gears that a part has a hand in engaging. */
    ITS_GEARS(Kinds.ENGAGING, Situations.IN_GEAR),
    /** Gears, whichever. */
    GEARS(EnumSet.allOf(PartKind.class), Situations.IN_GEAR),
    /** Anything. */
    ANYTHING(EnumSet.allOf(PartKind.class), EnumSet.allOf(Situation.class)),
    /** What drives though nothing is selected. */
    NEUTRAL(
            EnumSet.allOf(PartKind.class),
            EnumSet.of(Situation.NEUTRAL_PEDAL_UP, Situation.PUSHED, Situation.ROLLING_IN_NEUTRAL)),
    /** What cannot turn. */
    LOCKED(
            EnumSet.allOf(PartKind.class),
            EnumSet.of(Situation.SELECTED, Situation.NEUTRAL_PEDAL_UP, Situation.PUSHED, Situation.ROLLING_IN_NEUTRAL));

    private static final class Situations {
        static final Set<Situation> IN_GEAR = EnumSet.noneOf(Situation.class);
        static final Set<Situation> TURNING = EnumSet.complementOf(EnumSet.of(
                Situation.AT_REST, Situation.AT_THE_LEVER, Situation.SHIFTING_INTO, Situation.SHIFTING_OUT_OF));
        static final Set<Situation> LOADED = EnumSet.of(
                Situation.SELECTED,
                Situation.IN_GEAR_PEDAL_DOWN,
                Situation.PULLING,
                Situation.OVERRUN,
                Situation.ON_AND_OFF,
                Situation.IN_A_BEND);

        static {
            for (Situation situation : Situation.values()) {
                if (situation.isInGear()) {
                    IN_GEAR.add(situation);
                }
            }
        }
    }

    private static final class Kinds {
        static final Set<PartKind> TURNING = EnumSet.complementOf(EnumSet.of(
                PartKind.RAIL,
                PartKind.DETENT,
                PartKind.INTERLOCK,
                PartKind.INTERLOCK_PIECE,
                PartKind.SHIFT_DRUM,
                PartKind.SELECTOR_FINGER,
                PartKind.LOCK_OUT,
                PartKind.GEAR_LEVER,
                PartKind.LEVER_BUSH,
                PartKind.LEVER_BOOT,
                PartKind.LINKAGE,
                PartKind.SHIFT_CABLE,
                PartKind.GATE_CABLE,
                PartKind.ACTUATOR,
                PartKind.SEALS,
                PartKind.BREATHER,
                PartKind.TIMING));
        static final Set<PartKind> TOOTHED = EnumSet.of(
                PartKind.GEAR,
                PartKind.CHAIN,
                PartKind.FINAL_DRIVE,
                PartKind.DIFFERENTIAL,
                PartKind.OIL,
                PartKind.BOX_CASE);
        static final Set<PartKind> BETWEEN = EnumSet.of(
                PartKind.GEAR,
                PartKind.BEARING,
                PartKind.BLOCKING_RING,
                PartKind.THRUST_WASHER,
                PartKind.FLYWHEEL_BEARING,
                PartKind.RELEASE_BEARING,
                PartKind.CARRIER_BEARINGS,
                PartKind.WHEEL_BEARING);
        static final Set<PartKind> OF_DIFFERENTIALS = EnumSet.of(
                PartKind.DIFFERENTIAL,
                PartKind.SIDE_GEARS,
                PartKind.DIFFERENTIAL_PINIONS,
                PartKind.CROSS_SHAFT,
                PartKind.LIMITED_SLIP);
        static final Set<PartKind> ENGAGING = EnumSet.of(
                PartKind.SHAFT,
                PartKind.GEAR,
                PartKind.SLEEVE,
                PartKind.HUB,
                PartKind.KEYS,
                PartKind.BLOCKING_RING,
                PartKind.CLUTCHING_TEETH,
                PartKind.DOG_RING,
                PartKind.THRUST_WASHER,
                PartKind.BEARING,
                PartKind.DIFFERENTIAL,
                PartKind.FORK,
                PartKind.RAIL,
                PartKind.DETENT,
                PartKind.INTERLOCK,
                PartKind.INTERLOCK_PIECE,
                PartKind.SHIFT_DRUM,
                PartKind.SELECTOR_FINGER,
                PartKind.LOCK_OUT,
                PartKind.GEAR_LEVER,
                PartKind.LEVER_BUSH,
                PartKind.LEVER_BOOT,
                PartKind.LINKAGE,
                PartKind.SHIFT_CABLE,
                PartKind.GATE_CABLE,
                PartKind.ACTUATOR,
                PartKind.MOUNTINGS,
                PartKind.CLUTCH_HOUSING,
                PartKind.FLYWHEEL_BEARING);
    }

    private final Set<PartKind> kinds;
    private final Set<Situation> situations;

    OccasionLimits(Set<PartKind> kinds, Set<Situation> situations) {
        this.kinds = kinds;
        this.situations = situations;
    }

    boolean canBeAskedOf(PartKind kind) {
        return kinds.contains(kind);
    }

    boolean canHoldIn(Situation situation) {
        return situations.contains(situation);
    }
}
