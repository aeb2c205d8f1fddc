package org.layshaft.engine.fit;

/** What one check says. */
public enum Outcome {
    HOLDS,
    FAILS,
    /** A fact is missing. */
    UNTOLD
}
