package org.layshaft.engine.spline;

/** Which side of a splined connection. */
public enum Member {
    SHAFT,
    HUB;

    /** As it stands in a sentence: {@code shaft}. */
    public String word() {
        return this == SHAFT ? "shaft" : "hub";
    }
}
