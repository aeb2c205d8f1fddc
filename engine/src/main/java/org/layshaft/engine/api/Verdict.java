package org.layshaft.engine.api;

import java.util.Locale;

/** What becomes of a gear. */
public enum Verdict {
    WORKS,
    /** It drives at its ratio, and one notices something, or may. */
    WORKS_WITH_NOTICE,
    /** It depends on something that is not known of a fault. */
    UNCERTAIN,
    /** It does not drive, or not in this gear. */
    LOST,
    /** The input, the output, or both can only stand still. */
    LOCKS;

    /** In a sentence: {@code works, with something noticed}. */
    public String says() {
        return switch (this) {
            case WORKS -> "works";
            case WORKS_WITH_NOTICE -> "works, with something noticed";
            case UNCERTAIN -> "may work or may not";
            case LOST -> "is lost";
            case LOCKS -> "locks the box";
        };
    }

    /** As written in JSON: {@code works-with-notice}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
