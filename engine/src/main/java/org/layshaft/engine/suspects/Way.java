package org.layshaft.engine.suspects;

import org.layshaft.engine.symptom.FaultDictionary.Entry;

/** A fault with everything told, and how it stands up to the clues. */
record Way(Entry entry, Assessment assessment) {

    /** The lower, the better it fits. */
    int fit() {
        return assessment.shortfall() + Weights.unlooked(assessment.unlooked());
    }
}
