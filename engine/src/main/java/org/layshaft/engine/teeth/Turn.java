package org.layshaft.engine.teeth;

/** Which way something turns, as seen from the front end of its shaft, looking to the rear. */
public enum Turn {
    CLOCKWISE,
    ANTICLOCKWISE;

    public Turn opposite() {
        return this == CLOCKWISE ? ANTICLOCKWISE : CLOCKWISE;
    }

    int sign() {
        return this == CLOCKWISE ? 1 : -1;
    }
}
