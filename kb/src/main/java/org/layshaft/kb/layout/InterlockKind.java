package org.layshaft.kb.layout;

/** How rails are kept from moving together. */
public enum InterlockKind {
    /** Plungers between neighbouring rails, and a pin through each rail that has one on either side. */
    PINS,
    /** One plate that the finger carries along, shutting every rail but the one it stands at. */
    PLATE,
    /** One collar around a single selector shaft. */
    COLLAR,
    NONE
}
