package org.layshaft.kb.layout;

import java.util.Locale;

/** A direction along the shafts. The front is the clutch end of the box, whichever way the box sits in the vehicle. */
public enum Side {
    FRONT,
    REAR;

    public Side opposite() {
        return this == FRONT ? REAR : FRONT;
    }

    /** As written in packs: {@code front}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
