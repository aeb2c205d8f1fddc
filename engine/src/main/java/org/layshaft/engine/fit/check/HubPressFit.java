package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A hub that is pressed on its shaft sits fast. */
public final class HubPressFit extends PressFit {
    public HubPressFit() {
        super("hub-press-fit", "Press fit of the hub", MeetingKind.HUB);
    }
}
