package org.layshaft.engine.api;

import org.layshaft.engine.exact.Fraction;

/**
 * One body on the way from input to output.
 *
 * @param part id of the shaft, gear, sleeve, differential or half-shaft
 * @param speed its turns for one turn of the input; negative for the other sense
 */
public record PathStep(String part, Fraction speed) {}
