package org.layshaft.engine.api;

import java.util.Locale;

/** Which way a gear takes the vehicle. */
public enum Direction {
    FORWARD,
    REVERSE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
