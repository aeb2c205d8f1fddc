package org.layshaft.kb.failure;

/** How often a failure is met, coarsely. */
public enum Commonness {
    COMMON,
    OCCASIONAL,
    RARE
}
