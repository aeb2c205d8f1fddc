package org.layshaft.engine.road;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing.Step;
import org.layshaft.engine.stated.Telling;

/**
 * What every gear of a vehicle comes to on the road.
 *
 * @param kmh road speed that engine speeds are told at; empty where none is asked about
 * @param fastestRpm that the torque of the engine is stated for; empty where its curve is not stated
 * @param topSpeed on the level, in whichever gear is the fastest
 */
public record RoadTable(
        Telling<RollingCircumference> tyre,
        Optional<Fraction> kmh,
        List<Row> rows,
        Optional<Fraction> fastestRpm,
        Telling<Optional<TopSpeed>> topSpeed) {
    public RoadTable {
        rows = List.copyOf(rows);
    }

    /** Gears in which the road speed asks for more than the engine's curve covers. */
    public List<String> beyondTheCurve() {
        return rows.stream()
                .filter(row -> fastestRpm
                        .flatMap(fastest -> row.rpm().flatMap(Telling::value).filter(rpm -> rpm.compareTo(fastest) > 0))
                        .isPresent())
                .map(Row::gear)
                .toList();
    }

    /**
     * One gear.
     *
     * @param ratio of the box, without sign
     * @param overall turns of the engine for one turn of the wheels
     * @param step to the next higher forward gear, where there is one
     * @param rpm of the engine at the road speed; empty where none is asked about
     * @param rpmAfterShiftUp of the engine at that speed in the next higher gear
     * @param steepest gradient that full load climbs anywhere along the engine's curve
     */
    public record Row(
            String gear,
            Fraction ratio,
            Telling<Fraction> overall,
            Optional<Step> step,
            Telling<Fraction> kmhPer1000Rpm,
            Optional<Telling<Fraction>> rpm,
            Optional<Telling<Fraction>> rpmAfterShiftUp,
            Telling<Gradient> steepest) {}

    public static RoadTable of(Vehicle vehicle, Optional<Fraction> kmh) {
        List<Row> rows = vehicle.gearing().ratios().keySet().stream()
                .map(gear -> row(gear, vehicle, kmh))
                .toList();
        return new RoadTable(
                vehicle.tyre(),
                kmh,
                rows,
                vehicle.pull().engine().map(EngineCurve::fastestRpm),
                vehicle.pull().topSpeed());
    }

    private static Row row(String gear, Vehicle vehicle, Optional<Fraction> kmh) {
        Gearing gearing = vehicle.gearing();
        RoadSpeeds speeds = vehicle.speeds();
        Optional<Step> step = gearing.steps().stream()
                .filter(each -> each.lower().equals(gear))
                .findFirst();
        return new Row(
                gear,
                gearing.size(gear),
                gearing.overall(gear),
                step,
                speeds.kmhPer1000Rpm(gear),
                kmh.map(speed -> speeds.rpmAt(gear, speed)),
                kmh.flatMap(speed ->
                        step.map(up -> speeds.shift(gear, up.higher(), speed).map(RoadSpeeds.Shift::rpmAfter))),
                vehicle.pull().steepest(gear));
    }
}
