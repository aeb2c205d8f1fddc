package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The hole of the fork is as wide as its rail is thick. */
public final class RailDiameter extends SameFact {
    public RailDiameter() {
        super("rail-diameter", "Diameter of the rail", MeetingKind.RAIL, FactName.RAIL_MM, FactName.RAIL_MM);
    }
}
