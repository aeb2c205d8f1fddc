package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A pressed hub finds room on its seat. */
public final class HubLength extends SeatLength {
    public HubLength() {
        super("hub-length", "Length of the hub on its seat", MeetingKind.HUB);
    }
}
