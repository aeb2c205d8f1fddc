package org.layshaft.engine.spline;

/** How the bottom of the spaces is shaped. */
public enum Root {
    FLAT,
    FILLET;

    /** As written: {@code flat root}. */
    public String word() {
        return this == FLAT ? "flat root" : "fillet root";
    }
}
