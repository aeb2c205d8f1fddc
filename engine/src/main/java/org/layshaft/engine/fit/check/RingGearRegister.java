package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The ring gear is centred on the differential that it is bolted to. */
public final class RingGearRegister extends SameFact {
    public RingGearRegister() {
        super(
                "ring-gear-register",
                "Register of the ring gear",
                MeetingKind.RING_GEAR,
                FactName.REGISTER_MM,
                FactName.REGISTER_MM);
    }
}
