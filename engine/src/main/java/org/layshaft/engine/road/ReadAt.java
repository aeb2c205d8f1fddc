package org.layshaft.engine.road;

/** Where a speedometer is driven from, or its pulses are taken. */
public enum ReadAt {
    /** From the output of the gearbox: the axle ratio lies between there and the wheels. */
    GEARBOX_OUTPUT,
    /** From the differential or a wheel: the axle ratio lies before. */
    DIFFERENTIAL_OR_WHEEL
}
