package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;

/** Tractive effort at a road speed, the engine at full load. */
public record EffortPoint(Fraction kmh, double newtons) {}
