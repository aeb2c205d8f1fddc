package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** Needles, bush, spline or press: gear and shaft are made for the same. */
public final class GearHeldBy extends HeldAlike {
    public GearHeldBy() {
        super("gear-held-by", "How the gear is held", MeetingKind.SEAT);
    }
}
