package org.layshaft.engine.road;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.EngineCurve.Point;
import org.layshaft.engine.stated.Telling;

/** A vehicle of round figures: 30 km/h for each 1000 rpm in its fourth and direct gear. */
final class SomeVehicle {
    private SomeVehicle() {}

    static Pull pull() {
        Map<String, Fraction> ratios = new LinkedHashMap<>();
        ratios.put("1", Fraction.of(4));
        ratios.put("2", Fraction.of(2));
        ratios.put("3", Fraction.of(5, 4));
        ratios.put("4", Fraction.ONE);
        ratios.put("R", Fraction.of(-4));
        return new Pull(
                new RoadSpeeds(
                        new Gearing(ratios, Optional.of(Fraction.of(39, 10))),
                        Telling.told(RollingCircumference.stated(1950))),
                Optional.of(
                        new EngineCurve(List.of(point(1000, 80), point(2500, 120), point(4000, 120), point(6000, 90)))),
                Optional.of(Fraction.of(9, 10)),
                resistance(1200));
    }

    static Resistance resistance(int massKg) {
        return new Resistance(
                Optional.of(Fraction.of(massKg)),
                Optional.of(Fraction.of(13, 1000)),
                Optional.of(Fraction.of(7, 10)),
                Optional.of(Fraction.of(12, 10)));
    }

    private static Point point(int rpm, int torqueNm) {
        return new Point(Fraction.of(rpm), Fraction.of(torqueNm));
    }
}
