package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;

/** A gear that is pressed on its shaft sits fast. */
public final class GearPressFit extends PressFit {
    public GearPressFit() {
        super("gear-press-fit", "Press fit of the gear", MeetingKind.SEAT);
    }
}
