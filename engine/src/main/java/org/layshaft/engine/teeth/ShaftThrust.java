package org.layshaft.engine.teeth;

import org.layshaft.engine.stated.Telling;

/**
 * The thrust of all gears on one shaft of a box, and what takes it.
 *
 * @param shaft id of the shaft, or of the differential
 */
public record ShaftThrust(String shaft, Telling<Thrust> thrust, Telling<ThrustSeat> takenBy) {}
