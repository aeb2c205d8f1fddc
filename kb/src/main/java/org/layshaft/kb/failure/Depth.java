package org.layshaft.kb.failure;

import java.util.Locale;

/** How far one must dismantle to see a failure, from the least to the most. */
public enum Depth {
    /** Nothing is opened: looked at, felt or adjusted from outside. */
    OUTSIDE,
    /** Oil is drained or a plug is drawn. */
    PLUG,
    /** A cover, the selector housing or a drive shaft comes off with the box in place. */
    COVER,
    /** The box comes out. */
    BOX_OUT,
    /** The box is out and in pieces. */
    STRIPPED;

    /** As written in packs: {@code box-out}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
