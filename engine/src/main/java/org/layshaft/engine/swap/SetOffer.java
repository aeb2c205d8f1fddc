package org.layshaft.engine.swap;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.Serving;

/**
 * A set that can be had, serves, and meets a wish.
 *
 * @param serving where it serves, and with what else
 * @param change what it changes
 * @param ratio of the box in the gear that the wish is about, without sign
 * @param distance from the best ratio, as a part of it
 */
public record SetOffer(Serving serving, Change change, Fraction ratio, Fraction distance) {}
