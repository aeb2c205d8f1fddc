package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The sides of clutching teeth and sleeve lean alike, so that load keeps the gear in. */
public final class ClutchingBackTaper extends SameFact {
    public ClutchingBackTaper() {
        super(
                "clutching-back-taper",
                "Back taper of the clutching teeth",
                MeetingKind.CLUTCHING,
                FactName.BACK_TAPER_DEG,
                FactName.SLIDING_BACK_TAPER_DEG);
    }
}
