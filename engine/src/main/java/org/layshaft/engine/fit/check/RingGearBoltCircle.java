package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The holes of ring gear and differential stand on one circle. */
public final class RingGearBoltCircle extends SameFact {
    public RingGearBoltCircle() {
        super(
                "ring-gear-bolt-circle",
                "Bolt circle of the ring gear",
                MeetingKind.RING_GEAR,
                FactName.BOLT_CIRCLE_MM,
                FactName.BOLT_CIRCLE_MM);
    }
}
