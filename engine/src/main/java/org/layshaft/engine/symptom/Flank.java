package org.layshaft.engine.symptom;

/** One side of a gear's teeth. */
public enum Flank {
    /** The one that is loaded when the engine pulls in the first gear that loads this one at all, forward before reverse. */
    DRIVE,
    /** The other. */
    COAST
}
