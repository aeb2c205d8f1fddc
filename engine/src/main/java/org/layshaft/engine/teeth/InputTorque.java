package org.layshaft.engine.teeth;

import org.layshaft.engine.exact.Fraction;

/**
 * What stands on the input of a box.
 *
 * @param nm torque in N·m; less than 0 on the overrun
 * @param turns which way the input turns, seen from the front; most engines turn theirs clockwise
 */
public record InputTorque(Fraction nm, Turn turns) {}
