package org.layshaft.kb.layout;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A toothed wheel.
 *
 * @param carrier id of the shaft it sits on; of the sleeve, for a {@link Seat#RIM}; of the differential, for a ring gear
 * @param form where its teeth are
 * @param teeth at least 5
 * @param moduleMm normal module in mm, where the layout says
 * @param helixDeg helix angle in degrees, for a bevel gear its spiral angle; 0 is straight cut
 * @param hand which way its helix or spiral winds, where the layout says; empty for a straight-cut gear
 * @param pressureAngleDeg normal pressure angle in degrees
 */
public record Gear(
        Named named,
        String carrier,
        Seat seat,
        GearForm form,
        int teeth,
        OptionalDouble moduleMm,
        double helixDeg,
        Optional<Hand> hand,
        double pressureAngleDeg)
        implements Part {
    @Override
    public PartKind kind() {
        return PartKind.GEAR;
    }

    /** The same with another number of teeth. */
    public Gear withTeeth(int other) {
        return new Gear(named, carrier, seat, form, other, moduleMm, helixDeg, hand, pressureAngleDeg);
    }

    public boolean isFree() {
        return seat == Seat.FREE;
    }
}
