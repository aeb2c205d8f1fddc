package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A gear finds room between what stands on either side of its seat. */
public final class GearLength extends SeatLength {
    public GearLength() {
        super("gear-length", "Length of the gear on its seat", MeetingKind.SEAT);
    }
}
