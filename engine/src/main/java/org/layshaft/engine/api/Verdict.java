package org.layshaft.engine.api;

import java.util.Locale;

/** What becomes of a gear. */
public enum Verdict {
    WORKS,
    /** It drives at its ratio, and one notices something. */
    WORKS_WITH_NOTICE,
    /** It depends on something that is not known of a fault. */
    UNCERTAIN,
    /** It does not drive, or not in this gear. */
    LOST,
    /** Input and output can only stand still. */
    LOCKS;

    /** As written in JSON: {@code works-with-notice}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
