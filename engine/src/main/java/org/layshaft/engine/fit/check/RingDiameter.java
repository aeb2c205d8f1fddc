package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The points of the blocking ring stand where the splines of the sleeve are. */
public final class RingDiameter extends SameFact {
    public RingDiameter() {
        super(
                "ring-diameter",
                "Diameter of the points of the ring",
                MeetingKind.RING,
                FactName.CLUTCHING_MM,
                FactName.SLIDING_MM);
    }
}
