package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The flanks of both gears of a mesh lean alike. */
public final class PressureAngle extends SameFact {
    public PressureAngle() {
        super(
                "pressure-angle",
                "Pressure angle",
                MeetingKind.TEETH,
                FactName.PRESSURE_ANGLE_DEG,
                FactName.PRESSURE_ANGLE_DEG);
    }
}
