package org.layshaft.kb.typed;

/** The side of its mate on which a bevel gear sits; the other side turns the cross shaft the other way. */
public enum Crown {
    LEFT,
    RIGHT
}
