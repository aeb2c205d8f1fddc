package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The flanks of both gears of the speed drive lean alike. */
public final class SpeedPressureAngle extends SameFact {
    public SpeedPressureAngle() {
        super(
                "speed-pressure-angle",
                "Pressure angle of the speed drive",
                MeetingKind.SPEED_DRIVE,
                FactName.PRESSURE_ANGLE_DEG,
                FactName.PRESSURE_ANGLE_DEG);
    }
}
