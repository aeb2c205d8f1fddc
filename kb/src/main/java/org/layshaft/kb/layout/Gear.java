package org.layshaft.kb.layout;

import java.util.OptionalDouble;

/**
 * A toothed wheel.
 *
 * @param carrier id of the shaft it sits on; of the sleeve, for a {@link Seat#RIM}; of the differential, for a ring gear
 * @param teeth at least 5
 * @param moduleMm normal module in mm, where the layout says
 * @param helixDeg helix angle in degrees; 0 is straight cut
 */
public record Gear(Named named, String carrier, Seat seat, int teeth, OptionalDouble moduleMm, double helixDeg)
        implements Part {
    @Override
    public PartKind kind() {
        return PartKind.GEAR;
    }

    public boolean isFree() {
        return seat == Seat.FREE;
    }
}
