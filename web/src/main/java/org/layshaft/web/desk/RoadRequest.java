package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;

/**
 * A box on the road, and what is told of its vehicle, as written. Whatever is empty is as the layout states it, or is
 * not known.
 *
 * @param layout id of the layout; empty for the first
 * @param tyre size code: {@code 205/55 R16}
 * @param rolls how far a driven wheel rolls in one turn, in mm
 * @param axle turns of the box's output for one turn of the wheels
 * @param mass {@code 1450}, in kg, or {@code 3200 lb}
 * @param efficiency from engine to wheels: {@code 0.92}
 * @param rolling rolling resistance over weight: {@code 0.013}
 * @param drag drag coefficient times frontal area, in m²
 * @param air density in kg/m³
 * @param engine full-load torque by speed: {@code 1000 150, 1800 240}, in N·m; with {@code lb ft} at the end, in lb·ft
 * @param revs speeds that the engine is used between, in rpm: {@code 900-4000}
 * @param at road speed that engine speeds are told at, in the unit chosen, or with {@code km/h} or {@code mph}
 * @param units {@code us} for mph, lb·ft, lbf; otherwise metric
 */
public record RoadRequest(
        Optional<String> layout,
        Optional<String> tyre,
        Optional<String> rolls,
        Optional<String> axle,
        Optional<String> mass,
        Optional<String> efficiency,
        Optional<String> rolling,
        Optional<String> drag,
        Optional<String> air,
        Optional<String> engine,
        Optional<String> revs,
        Optional<String> at,
        Optional<String> units) {

    /** Nothing told of the vehicle besides what the layout states. */
    public static RoadRequest of(Optional<String> layout) {
        Optional<String> none = Optional.empty();
        return new RoadRequest(layout, none, none, none, none, none, none, none, none, none, none, none, none);
    }

    public RoadRequest inUnits(String other) {
        return new RoadRequest(
                layout, tyre, rolls, axle, mass, efficiency, rolling, drag, air, engine, revs, at, Optional.of(other));
    }

    /** Names that others of the vehicle's facts have gone by: everything written, whatever it says. */
    List<Optional<String>> told() {
        return List.of(tyre, rolls, axle, mass, efficiency, rolling, drag, air, engine);
    }
}
