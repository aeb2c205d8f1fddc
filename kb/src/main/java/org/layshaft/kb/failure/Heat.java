package org.layshaft.kb.failure;

import java.util.Locale;

/** How warm box and oil are, where it makes a difference. */
public enum Heat {
    COLD,
    HOT;

    /** As written in packs: {@code cold}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
