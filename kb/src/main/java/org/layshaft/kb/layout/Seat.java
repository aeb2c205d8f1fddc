package org.layshaft.kb.layout;

/** How a gear sits on what carries it. */
public enum Seat {
    /** Splined, pressed or made in one with its shaft: turns with it. */
    FIXED,
    /** On needles or a bush: turns on its shaft until a sleeve ties it. */
    FREE,
    /** Splined to a turning shaft, or free on a held one, and moved along it by a fork. */
    SLIDING,
    /** Teeth on the outside of a sleeve: turns and moves with the sleeve. */
    RIM
}
