package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The splines of sleeve and hub stand on one diameter. */
public final class SlidingDiameter extends SameFact {
    public SlidingDiameter() {
        super(
                "sliding-diameter",
                "Diameter of the sliding splines",
                MeetingKind.SLIDING,
                FactName.SLIDING_MM,
                FactName.SLIDING_MM);
    }
}
