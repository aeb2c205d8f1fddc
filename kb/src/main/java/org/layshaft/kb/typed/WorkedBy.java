package org.layshaft.kb.typed;

/** What is between a lever and the rails that it works. */
public enum WorkedBy {
    /** Nothing: the lever reaches into the box. */
    DIRECT,
    RODS,
    CABLES,
    AIR,
    ELECTRIC
}
