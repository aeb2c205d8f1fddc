package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A splined hub is carried over as much of its length as the one before. */
public final class HubSplineLength extends SplineLength {
    public HubSplineLength() {
        super("hub-spline-length", "Length of the spline of the hub", MeetingKind.HUB);
    }
}
