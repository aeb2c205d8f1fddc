package org.layshaft.engine.swap;

import org.layshaft.engine.road.SpeedometerChange;

/** Other gears for the speedometer. */
public record SpeedDrive(SpeedGears before, SpeedGears after) {

    SpeedometerChange.Change change() {
        return new SpeedometerChange.Change(before.ratio(), after.ratio());
    }
}
