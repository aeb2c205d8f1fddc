package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The blocking ring has as many points as the sleeve has splines. */
public final class RingCount extends SameFact {
    public RingCount() {
        super(
                "ring-count",
                "Number of points of the ring",
                MeetingKind.RING,
                FactName.CLUTCHING_TEETH,
                FactName.SLIDING_TEETH);
    }
}
