package org.layshaft.kb.layout;

import java.util.Locale;

/** The kinds of part that a failure mode can befall. */
public enum PartKind {
    SHAFT,
    GEAR,
    SLEEVE,
    HUB,
    BLOCKING_RING,
    CLUTCHING_TEETH,
    DOG_RING,
    FORK,
    RAIL,
    DETENT,
    INTERLOCK,
    INTERLOCK_PIECE,
    BEARING,
    CLUTCH,
    DIFFERENTIAL,
    HALF_SHAFT,
    JOINT;

    /** As written in packs: {@code blocking-ring}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
