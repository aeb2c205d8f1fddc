package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The sleeve has as many splines as the gear has clutching teeth. */
public final class ClutchingCount extends SameFact {
    public ClutchingCount() {
        super(
                "clutching-count",
                "Number of clutching teeth",
                MeetingKind.CLUTCHING,
                FactName.CLUTCHING_TEETH,
                FactName.SLIDING_TEETH);
    }
}
