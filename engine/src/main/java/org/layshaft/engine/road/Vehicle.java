package org.layshaft.engine.road;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.EngineCurve.Point;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;

/**
 * A box in its vehicle, as far as that is stated.
 *
 * @param readAt where its speedometer takes the speed from
 */
public record Vehicle(Gearing gearing, Telling<RollingCircumference> tyre, Pull pull, Optional<ReadAt> readAt) {

    /**
     * The gears that were derived, in the vehicle that is stated.
     *
     * @throws ImpossibleFactsException where a stated fact makes no sense, such as a size code that is none
     */
    public static Vehicle of(Box box, Road road) {
        Gearing gearing = new Gearing(ratios(box), behind(box.layout(), road));
        Telling<RollingCircumference> tyre = tyre(road);
        Pull pull = new Pull(
                new RoadSpeeds(gearing, tyre),
                engine(road),
                road.efficiency().map(Fraction::of),
                new Resistance(
                        road.massKg().map(Fraction::of),
                        road.rollingCoefficient().map(Fraction::of),
                        road.dragAreaM2().map(Fraction::of),
                        road.airDensityKgM3().map(Fraction::of)));
        return new Vehicle(gearing, tyre, pull, road.speedRead().map(Vehicle::readAt));
    }

    public RoadSpeeds speeds() {
        return pull.speeds();
    }

    private static ReadAt readAt(Road.SpeedRead place) {
        return place == Road.SpeedRead.GEARBOX_OUTPUT ? ReadAt.GEARBOX_OUTPUT : ReadAt.DIFFERENTIAL_OR_WHEEL;
    }

    private static Map<String, Fraction> ratios(Box box) {
        Map<String, Fraction> ratios = new LinkedHashMap<>();
        box.gears()
                .forEach(gear -> ratios.put(
                        gear.name(),
                        gear.direction() == Direction.REVERSE ? gear.ratio().negated() : gear.ratio()));
        return ratios;
    }

    /** Where the drive leaves by half-shafts, the box reaches the wheels by itself. */
    private static Optional<Fraction> behind(Layout layout, Road road) {
        boolean toWheels = layout.outputs().stream()
                .allMatch(output -> layout.find(HalfShaft.class, output).isPresent());
        return road.axleRatio().map(Fraction::of).or(() -> toWheels ? Optional.of(Fraction.ONE) : Optional.empty());
    }

    private static Telling<RollingCircumference> tyre(Road road) {
        if (road.rollingCircumferenceMm().isPresent()) {
            return Telling.told(
                    RollingCircumference.stated(road.rollingCircumferenceMm().getAsInt()));
        }
        return Telling.of(road.tyre(), "the tyre or its rolling circumference")
                .map(TyreSize::read)
                .then(size -> onRoad(size, road.dynamicFactor()));
    }

    private static Telling<RollingCircumference> onRoad(TyreSize size, Optional<BigDecimal> factor) {
        return factor.map(Fraction::of)
                .map(RollingConvention::ofFreeCircumference)
                .map(convention -> Telling.told(RollingCircumference.of(size, convention)))
                .orElseGet(() -> RollingCircumference.of(size));
    }

    private static Optional<EngineCurve> engine(Road road) {
        return road.engine().isEmpty()
                ? Optional.empty()
                : Optional.of(new EngineCurve(road.engine().stream()
                        .map(point -> new Point(Fraction.of(point.rpm()), Fraction.of(point.torqueNm())))
                        .toList()));
    }
}
