package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The points of clutching teeth and sleeve lie flat on each other. */
public final class ClutchingChamfer extends SameFact {
    public ClutchingChamfer() {
        super(
                "clutching-chamfer",
                "Chamfer of the clutching teeth",
                MeetingKind.CLUTCHING,
                FactName.CHAMFER_DEG,
                FactName.SLIDING_CHAMFER_DEG);
    }
}
