package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A splined gear is carried over as much of its length as the one before. */
public final class GearSplineLength extends SplineLength {
    public GearSplineLength() {
        super("gear-spline-length", "Length of the spline of the gear", MeetingKind.SEAT);
    }
}
