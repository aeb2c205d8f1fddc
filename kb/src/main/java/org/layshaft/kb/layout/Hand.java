package org.layshaft.kb.layout;

import java.util.Locale;

/** Which way helical teeth wind about their axis, as the threads of a screw do. */
public enum Hand {
    LEFT,
    RIGHT;

    public Hand opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** As written: {@code right}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
