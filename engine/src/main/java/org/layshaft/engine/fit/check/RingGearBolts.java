package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The ring gear has a hole for each bolt of the differential. */
public final class RingGearBolts extends SameFact {
    public RingGearBolts() {
        super("ring-gear-bolts", "Bolts of the ring gear", MeetingKind.RING_GEAR, FactName.BOLTS, FactName.BOLTS);
    }
}
