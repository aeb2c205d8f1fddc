package org.layshaft.kb.layout;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** The kinds of part that a failure mode can befall. */
public enum PartKind {
    SHAFT,
    GEAR,
    SLEEVE,
    HUB,
    /** The keys of a synchroniser and the springs that press them out. */
    KEYS,
    BLOCKING_RING,
    CLUTCHING_TEETH,
    DOG_RING,
    /** What a free gear runs against endways. */
    THRUST_WASHER,
    FORK,
    RAIL,
    DETENT,
    INTERLOCK,
    INTERLOCK_PIECE,
    /** The drum that pushes rails one after another. */
    SHIFT_DRUM,
    /** The finger that reaches into the rails. */
    SELECTOR_FINGER,
    /** What keeps the lever out of reverse until it is meant. */
    LOCK_OUT,
    GEAR_LEVER,
    LEVER_BUSH,
    LEVER_BOOT,
    /** Rods, or whatever else is between lever and box where nothing says that they are cables. */
    LINKAGE,
    /** The cable that pushes the rail. */
    SHIFT_CABLE,
    /** The cable that chooses between rails. */
    GATE_CABLE,
    /** What works a lever by air or electricity. */
    ACTUATOR,
    BEARING,
    /** How two countershafts that share the drive are set to each other. */
    TIMING,
    /** The bearing in the flywheel that carries the nose of the input shaft. */
    FLYWHEEL_BEARING,
    RELEASE_BEARING,
    CLUTCH,
    CLUTCH_HOUSING,
    ENGINE,
    MOUNTINGS,
    OIL,
    SEALS,
    BREATHER,
    BOX_CASE,
    CHAIN,
    /** How ring gear and pinion are set: depth, backlash, preload. */
    FINAL_DRIVE,
    DIFFERENTIAL,
    SIDE_GEARS,
    DIFFERENTIAL_PINIONS,
    CROSS_SHAFT,
    CARRIER_BEARINGS,
    LIMITED_SLIP,
    HALF_SHAFT,
    INNER_JOINT,
    OUTER_JOINT,
    WHEEL_BEARING,
    TYRES,
    JOINT,
    SPEED_READING;

    private static final Set<PartKind> PLURAL = EnumSet.of(
            KEYS, CLUTCHING_TEETH, MOUNTINGS, SEALS, SIDE_GEARS, DIFFERENTIAL_PINIONS, CARRIER_BEARINGS, TYRES);

    /** Whether one part of this kind is spoken of as several things: the tyres are worn. */
    public boolean isPlural() {
        return PLURAL.contains(this);
    }

    /** As written in packs: {@code blocking-ring}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
