package org.layshaft.engine.road;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/**
 * What comes of the engine at the tyres in one gear.
 *
 * @param kmhPerRpm road speed for each turn of the engine a minute
 * @param efficiency from engine to wheels
 */
record AtWheels(Fraction kmhPerRpm, Fraction efficiency) {
    /** Turns a minute over km/h, times this, are turns for each metre of road. */
    private static final Fraction TURNS_A_METRE = Fraction.of(60, 1000);

    /** What the torque that the curve has at this road speed comes to. */
    Telling<Double> effortN(EngineCurve curve, Fraction kmh) {
        Fraction rpm = kmh.over(kmhPerRpm);
        return Telling.of(
                        curve.torqueNm(rpm),
                        "the engine's torque at %s rpm, with a curve from %s to %s rpm,"
                                .formatted(
                                        Shown.decimal(rpm),
                                        Shown.decimal(curve.slowestRpm()),
                                        Shown.decimal(curve.fastestRpm())))
                .map(this::newtons);
    }

    EffortLine line(EngineCurve curve) {
        return new EffortLine(curve.points().stream()
                .map(point -> new EffortPoint(kmhPerRpm.times(point.rpm()), newtons(point.torqueNm())))
                .toList());
    }

    private double newtons(Fraction torqueNm) {
        Fraction turnsAMetre = TURNS_A_METRE.over(kmhPerRpm);
        return 2 * Math.PI * torqueNm.times(turnsAMetre).times(efficiency).toDouble();
    }
}
