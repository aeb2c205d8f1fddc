package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.EngineCurve.Point;
import org.layshaft.engine.road.Gradient.Slope;
import org.layshaft.engine.road.TopSpeed.EndedBy;
import org.layshaft.engine.stated.ImpossibleFactsException;

class PullTest {
    private final Pull pull = SomeVehicle.pull();

    /** Power at the tyres is power of the engine less losses: F·v against 2π·n·T·efficiency, which knows no ratios. */
    @ParameterizedTest
    @CsvSource({"1, 20", "1, 40", "2, 50", "3, 90", "4, 70", "4, 130", "R, 20"})
    void effortTimesSpeedIsThePowerThatArrives(String gear, int kmh) {
        Fraction speed = Fraction.of(kmh);
        Fraction rpm = pull.speeds().rpmAt(gear, speed).value().orElseThrow();
        double torque = pull.engine().orElseThrow().torqueNm(rpm).orElseThrow().toDouble();
        double arriving = 2 * Math.PI * rpm.toDouble() / 60 * torque * 0.9;
        double effort = pull.effortN(gear, speed).value().orElseThrow();
        assertEquals(arriving, effort * kmh / 3.6, 1e-9 * arriving);
    }

    @Test
    void theEffortLineGoesThroughThePointsOfTheCurve() {
        List<EffortPoint> points = pull.effort("3").value().orElseThrow();
        assertEquals(4, points.size());
        for (EffortPoint point : points) {
            assertEquals(pull.effortN("3", point.kmh()).value().orElseThrow(), point.newtons(), 1e-9 * point.newtons());
        }
    }

    @Test
    void nothingIsToldOutsideTheCurve() {
        assertEquals(
                Optional.of("cannot be told, the engine's torque at 6666.67 rpm, with a curve from 1000 to 6000 rpm,"
                        + " is missing"),
                pull.effortN("1", Fraction.of(50)).whyNot());
        assertTrue(pull.gradient("4", Fraction.of(10)).value().isEmpty());
    }

    /** The second road: on the slope that was found, forces along it balance, drag by its own formula. */
    @ParameterizedTest
    @CsvSource({"1, 20", "1, 40", "2, 60", "3, 100", "4, 80", "4, 160"})
    void forcesBalanceOnTheGradient(String gear, int kmh) {
        double percent = slope(pull.gradient(gear, Fraction.of(kmh)).value().orElseThrow());
        double slope = Math.atan(percent / 100);
        double metresPerSecond = kmh / 3.6;
        double down = 1200 * 9.80665 * (Math.sin(slope) + 0.013 * Math.cos(slope))
                + 0.5 * 1.2 * 0.7 * metresPerSecond * metresPerSecond;
        double effort = pull.effortN(gear, Fraction.of(kmh)).value().orElseThrow();
        assertEquals(effort, down, 1e-9 * effort);
    }

    /** The steepest slope against all those at speeds close together. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4"})
    void noSpeedClimbsMoreThanTheSteepest(String gear) {
        double steepest = slope(pull.steepest(gear).value().orElseThrow());
        List<EffortPoint> points = pull.effort(gear).value().orElseThrow();
        Fraction from = points.get(0).kmh();
        Fraction span = points.get(points.size() - 1).kmh().minus(from);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 1000; i++) {
            Fraction kmh = from.plus(span.times(Fraction.of(i, 1000)));
            most = Math.max(most, slope(pull.gradient(gear, kmh).value().orElseThrow()));
        }
        assertTrue(most <= steepest + 1e-9, () -> "less than found: " + steepest);
        assertEquals(steepest, most, 0.01);
    }

    /** Bisection of the power that is left over, which shares no code with the quadratic equation. */
    @Test
    void topSpeedInFourthByBisection() {
        TopSpeed top = pull.topSpeed("4").value().orElseThrow().orElseThrow();
        double low = 100;
        double high = 180;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (powerLeft(middle) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(EndedBy.RESISTANCE, top.endedBy());
        assertEquals(low, top.kmh(), 1e-9 * low);
        assertEquals(Optional.of(top), pull.topSpeed().value().orElseThrow());
    }

    @Test
    void aLowGearIsEndedByTheCurve() {
        assertEquals(
                Optional.of(new TopSpeed("1", 45, EndedBy.END_OF_CURVE)),
                pull.topSpeed("1").value().orElseThrow());
    }

    @Test
    void aLoadThatNoGearMovesHasNoTopSpeed() {
        Pull overloaded = new Pull(pull.speeds(), pull.engine(), pull.efficiency(), SomeVehicle.resistance(900_000));
        assertEquals(Optional.empty(), overloaded.topSpeed().value().orElseThrow());
    }

    @Test
    void aLightVehicleClimbsWhateverItsTyresHold() {
        Pull light = new Pull(pull.speeds(), pull.engine(), pull.efficiency(), SomeVehicle.resistance(500));
        assertInstanceOf(
                Gradient.AnySlope.class,
                light.gradient("1", Fraction.of(20)).value().orElseThrow());
        assertInstanceOf(Gradient.NoSlope.class, Gradient.of(-1.2, 0.01));
    }

    @Test
    void everyMissingFactIsNamed() {
        Pull bare = new Pull(
                pull.speeds(),
                Optional.empty(),
                Optional.empty(),
                new Resistance(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        assertEquals(
                List.of(
                        "the engine's torque curve is missing",
                        "the efficiency from engine to wheels is missing",
                        "the mass is missing",
                        "the rolling coefficient is missing",
                        "the drag area is missing",
                        "the air density is missing"),
                bare.topSpeed("4").because());
        assertEquals(bare.topSpeed("4").because(), bare.topSpeed().because());
        assertEquals(
                bare.topSpeed("4").because(),
                bare.gradient("4", Fraction.of(50)).because());
    }

    @Test
    void impossibleCurvesAndEfficienciesAreRefused() {
        Point low = new Point(Fraction.of(1000), Fraction.of(90));
        assertThrows(ImpossibleFactsException.class, () -> new EngineCurve(List.of(low)));
        assertEquals(
                List.of("The engine's torque curve comes to 1000 rpm after a point that is not lower."
                        + " State the points by rising speed."),
                assertThrows(ImpossibleFactsException.class, () -> new EngineCurve(List.of(low, low)))
                        .problems());
        assertEquals(
                "The efficiency is 93. It cannot be more than 1; 93 per cent is 0.93.",
                assertThrows(
                                ImpossibleFactsException.class,
                                () -> new Pull(
                                        pull.speeds(), pull.engine(), Optional.of(Fraction.of(93)), pull.resistance()))
                        .getMessage());
    }

    private double powerLeft(double kmh) {
        double metresPerSecond = kmh / 3.6;
        double rpm = kmh * 1000 / 30;
        double torque = rpm <= 4000 ? 120 : 120 - (rpm - 4000) * 30 / 2000;
        double resistance = 1200 * 9.80665 * 0.013 + 0.5 * 1.2 * 0.7 * metresPerSecond * metresPerSecond;
        return torque * 2 * Math.PI * rpm / 60 * 0.9 - resistance * metresPerSecond;
    }

    private static double slope(Gradient gradient) {
        return assertInstanceOf(Slope.class, gradient).percent();
    }
}
