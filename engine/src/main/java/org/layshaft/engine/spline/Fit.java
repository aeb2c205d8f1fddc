package org.layshaft.engine.spline;

/** What centres the shaft in the hub. */
public enum Fit {
    SIDE,
    MAJOR_DIAMETER;

    /** As written: {@code side fit}. */
    public String word() {
        return this == SIDE ? "side fit" : "major diameter fit";
    }
}
