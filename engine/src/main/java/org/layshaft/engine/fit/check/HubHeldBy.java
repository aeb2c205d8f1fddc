package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** Spline or press: hub and shaft are made for the same. */
public final class HubHeldBy extends HeldAlike {
    public HubHeldBy() {
        super("hub-held-by", "How the hub is held", MeetingKind.HUB);
    }
}
