package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The sleeve has as many splines as its hub. */
public final class SlidingCount extends SameFact {
    public SlidingCount() {
        super(
                "sliding-count",
                "Number of sliding splines",
                MeetingKind.SLIDING,
                FactName.SLIDING_TEETH,
                FactName.SLIDING_TEETH);
    }
}
