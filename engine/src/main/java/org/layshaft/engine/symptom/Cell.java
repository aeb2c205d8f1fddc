package org.layshaft.engine.symptom;

import org.layshaft.kb.failure.Situation;

/**
 * A situation, and the gear that it is about.
 *
 * @param gear by its derived name; {@link World#NEUTRAL} for a situation that is not in gear
 */
public record Cell(Situation situation, String gear) {}
