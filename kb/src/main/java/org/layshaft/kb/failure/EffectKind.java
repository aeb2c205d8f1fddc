package org.layshaft.kb.failure;

import java.util.Locale;
import java.util.Set;
import org.layshaft.kb.layout.PartKind;

/** What a failure changes: the closed list that packs choose from. */
public enum EffectKind {
    /** No mesh of this gear, nor this chain, carries any more. */
    MESHES_CARRY_NOTHING(Argument.NONE, Set.of(PartKind.GEAR, PartKind.CHAIN)),
    /** A gear or hub that was fixed turns free on its shaft. */
    TURNS_FREE_ON_ITS_SHAFT(Argument.NONE, Set.of(PartKind.GEAR, PartKind.HUB)),
    /** A free gear turns with its shaft. */
    SEIZED_TO_ITS_SHAFT(Argument.NONE, Set.of(PartKind.GEAR)),
    /** The two things that a bearing lies between turn as one. */
    LETS_NOTHING_ROLL(Argument.NONE, Set.of(PartKind.BEARING)),
    /** A shaft is in two pieces; the argument names what sits just in front of the break. */
    CUT_BEHIND(Argument.PLACE, Set.of(PartKind.SHAFT)),
    /** What joined two shafts, or side gear and wheel, no longer does. */
    PARTED(Argument.NONE, Set.of(PartKind.HALF_SHAFT, PartKind.INNER_JOINT, PartKind.OUTER_JOINT, PartKind.JOINT)),
    /** No drive gets through, whatever is selected. */
    LETS_NO_DRIVE_THROUGH(
            Argument.NONE,
            Set.of(PartKind.CLUTCH, PartKind.DIFFERENTIAL_PINIONS, PartKind.CROSS_SHAFT, PartKind.SIDE_GEARS)),
    /** The two sides of a differential turn as one. */
    TIES_ITS_SIDES(Argument.NONE, Set.of(PartKind.DIFFERENTIAL_PINIONS, PartKind.LIMITED_SLIP)),
    /** What the fork moves stands off its middle, toward the argument. */
    STANDS_OFF_CENTRE(Argument.SIDE, Kinds.ENGAGING),
    /** What the fork moves does not engage on this side. */
    CANNOT_REACH(Argument.SIDE, Kinds.ENGAGING),
    /** What the fork moves engages on this side, but not to its full depth. */
    REACHES_PART_WAY(Argument.SIDE, Kinds.ENGAGING),
    /** The lever does not find the rail at this end of its gate. */
    CANNOT_FIND_RAIL(
            Argument.END,
            Set.of(
                    PartKind.GATE_CABLE,
                    PartKind.LINKAGE,
                    PartKind.SELECTOR_FINGER,
                    PartKind.GEAR_LEVER,
                    PartKind.LEVER_BUSH)),
    /** The sleeve cannot be moved, nor can its rail; the argument says where it stands. */
    STUCK_AT(Argument.POSITION, Kinds.ENGAGING),
    /** The rail moves, but no longer takes the sleeve with it; the argument says where the sleeve was left. */
    LEFT_AT(Argument.POSITION, Kinds.ENGAGING),
    /** The speeds of gear and hub are not brought together before the sleeve passes. */
    SPEEDS_NOT_MATCHED(Argument.NONE, Set.of(PartKind.BLOCKING_RING)),
    /** The engagement lets go under load. */
    LETS_GO_UNDER_LOAD(Argument.NONE, Kinds.ENGAGING),
    /** The rail is not held in its places. */
    RAIL_NOT_HELD(Argument.NONE, Set.of(PartKind.RAIL, PartKind.DETENT)),
    /** The piece no longer keeps rails apart. */
    RAILS_NOT_KEPT_APART(Argument.NONE, Set.of(PartKind.INTERLOCK, PartKind.INTERLOCK_PIECE)),
    /** The clutch goes on driving with the pedal down. */
    CLUTCH_DOES_NOT_RELEASE(Argument.NONE, Set.of(PartKind.CLUTCH));

    /** What an effect needs to be told. */
    public enum Argument {
        NONE,
        /** {@code front} or {@code rear}. */
        SIDE,
        /** {@code front}, {@code neutral} or {@code rear}. */
        POSITION,
        /** The id of what sits on the shaft just in front of the place. */
        PLACE,
        /** {@code first} or {@code last}: the rail that the lever passes first, or last. */
        END
    }

    /** The kinds of part that have a hand in engaging gears. */
    private static final class Kinds {
        static final Set<PartKind> ENGAGING = Set.of(
                PartKind.FORK,
                PartKind.RAIL,
                PartKind.DETENT,
                PartKind.SLEEVE,
                PartKind.HUB,
                PartKind.BLOCKING_RING,
                PartKind.CLUTCHING_TEETH,
                PartKind.DOG_RING,
                PartKind.KEYS,
                PartKind.GEAR,
                PartKind.BEARING,
                PartKind.THRUST_WASHER,
                PartKind.SHIFT_DRUM,
                PartKind.SELECTOR_FINGER,
                PartKind.LOCK_OUT,
                PartKind.GEAR_LEVER,
                PartKind.LEVER_BUSH,
                PartKind.LEVER_BOOT,
                PartKind.LINKAGE,
                PartKind.SHIFT_CABLE,
                PartKind.ACTUATOR,
                PartKind.MOUNTINGS,
                PartKind.CLUTCH_HOUSING);
    }

    private final Argument argument;
    private final Set<PartKind> kinds;

    EffectKind(Argument argument, Set<PartKind> kinds) {
        this.argument = argument;
        this.kinds = kinds;
    }

    /** Whether the failure of a part of this kind can change this. */
    public boolean canComeOf(PartKind kind) {
        return kinds.contains(kind);
    }

    public Argument argument() {
        return argument;
    }

    /** As written in packs: {@code cannot-reach}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
