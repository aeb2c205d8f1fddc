package org.layshaft.engine.swap;

import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.BoxForces;

/**
 * What one gear comes to.
 *
 * @param gear its derived name
 * @param ratio input turns for one turn of the output; less than 0 where the output turns the other way
 * @param road what it comes to on the road, at the cruising speed, with the step to the next higher gear
 * @param rpmAfterShiftUp of the engine once the next higher gear is in; empty where there is none
 * @param wheelTorqueNm on all driven wheels together; without sign for the way they turn
 * @param meshes by mesh id, how often the teeth of a pair, or the links of a chain, that carries the power meet in one
 *     turn of the input
 * @param forces at the teeth and along the shafts
 */
public record GearFigures(
        String gear,
        Fraction ratio,
        RoadTable.Row road,
        Optional<Telling<Fraction>> rpmAfterShiftUp,
        Telling<Fraction> wheelTorqueNm,
        Map<String, Fraction> meshes,
        Telling<BoxForces> forces) {
    private static final Fraction SECONDS_A_MINUTE = Fraction.of(60);

    public GearFigures {
        meshes = Map.copyOf(meshes);
    }

    /** Of the engine at the cruising speed. */
    public Telling<Fraction> rpmAtCruise() {
        return road.rpm().orElseGet(() -> Running.NOT_STATED.toldCruiseKmh());
    }

    /** How often a second the teeth of this mesh meet at the cruising speed. */
    public Telling<Fraction> hzAtCruise(String mesh) {
        return Telling.of(Optional.ofNullable(meshes.get(mesh)), "power through %s in this gear".formatted(mesh))
                .with(rpmAtCruise(), (order, rpm) -> order.times(rpm).over(SECONDS_A_MINUTE));
    }
}
