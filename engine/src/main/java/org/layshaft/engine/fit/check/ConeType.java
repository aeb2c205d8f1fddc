package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** Gear and blocking ring are made for as many cones as each other. */
public final class ConeType extends SameFact {
    public ConeType() {
        super("cone-type", "Type of cone", MeetingKind.CONE, FactName.CONE_TYPE, FactName.CONE_TYPE);
    }
}
