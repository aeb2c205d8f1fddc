package org.layshaft.kb.layout;

/** How rails are kept from moving together. */
public enum InterlockKind {
    /** Plungers between neighbouring rails, and a pin through each rail that has one on either side. */
    PINS,
    /** One plate that the finger carries along, shutting every rail but the one it stands at. */
    PLATE,
    /** One collar around a single selector shaft. */
    COLLAR,
    /** The grooves of a drum: each of its places moves the rails that it moves, and no other. */
    DRUM,
    NONE
}
