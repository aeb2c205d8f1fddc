package org.layshaft.kb.catalogue;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.layshaft.kb.layout.PartKind;

/** What a catalogue part is, and at which parts of a layout it can stand. */
public enum ComponentKind {
    GEAR(PartKind.GEAR),
    /** With the gears that are cut on it and the seats of those that sit on it. */
    SHAFT(PartKind.SHAFT),
    HUB(PartKind.HUB),
    SLEEVE(PartKind.SLEEVE),
    BLOCKING_RING(PartKind.BLOCKING_RING),
    FORK(PartKind.FORK),
    RAIL(PartKind.RAIL),
    KEYS(PartKind.KEYS),
    BEARING(PartKind.BEARING),
    /** Between a free gear and its shaft. */
    NEEDLES(PartKind.BEARING),
    THRUST_WASHER(PartKind.THRUST_WASHER),
    SHIM,
    DIFFERENTIAL(PartKind.DIFFERENTIAL),
    HALF_SHAFT(PartKind.HALF_SHAFT),
    /** With the lines of the shafts and the seats of their bearings; the clutch housing is one too. */
    CASE(PartKind.BOX_CASE, PartKind.CLUTCH_HOUSING),
    /** A gear that the speed reading is driven by, at {@link Build#SPEED_DRIVING} or {@link Build#SPEED_DRIVEN}. */
    SPEED_GEAR;

    private final Set<PartKind> standsAt;

    ComponentKind() {
        this.standsAt = EnumSet.noneOf(PartKind.class);
    }

    ComponentKind(PartKind standsAt, PartKind... also) {
        this.standsAt = EnumSet.of(standsAt, also);
    }

    /** Whether it can stand where a layout has such a part. */
    public boolean canStandAt(PartKind part) {
        return standsAt.contains(part);
    }

    /** As written in catalogues: {@code blocking-ring}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As spoken: {@code blocking ring}. */
    public String spoken() {
        return word().replace('-', ' ');
    }
}
