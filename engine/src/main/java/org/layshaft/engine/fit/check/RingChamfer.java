package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The points of ring and sleeve lie flat on each other while the ring blocks. */
public final class RingChamfer extends SameFact {
    public RingChamfer() {
        super(
                "ring-chamfer",
                "Chamfer of the points of the ring",
                MeetingKind.RING,
                FactName.CHAMFER_DEG,
                FactName.SLIDING_CHAMFER_DEG);
    }
}
