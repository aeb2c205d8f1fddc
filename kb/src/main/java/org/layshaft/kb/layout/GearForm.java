package org.layshaft.kb.layout;

import java.util.Locale;

/** Where a wheel has its teeth. */
public enum GearForm {
    /** On the outside of a cylinder, straight or helical. */
    EXTERNAL,
    /** On the inside of a ring. */
    INTERNAL,
    /** On a cone: straight or spiral bevel, or hypoid. */
    BEVEL,
    /** For a chain or toothed belt. */
    SPROCKET;

    /** As written: {@code internal}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
