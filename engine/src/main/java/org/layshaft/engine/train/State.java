package org.layshaft.engine.train;

import org.layshaft.engine.api.Motion;

/** All that a stance comes to: how everything turns for one turn of the input, and what becomes of a torque of 1 on it. */
public record State(Motion motion, Balance balance) {}
