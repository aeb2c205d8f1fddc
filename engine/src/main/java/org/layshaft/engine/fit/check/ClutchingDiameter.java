package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The clutching teeth stand where the splines of the sleeve are. */
public final class ClutchingDiameter extends SameFact {
    public ClutchingDiameter() {
        super(
                "clutching-diameter",
                "Diameter of the clutching teeth",
                MeetingKind.CLUTCHING,
                FactName.CLUTCHING_MM,
                FactName.SLIDING_MM);
    }
}
