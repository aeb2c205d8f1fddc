package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.GearForm;

/** Span and over pins, held against jaws and pins set to the points of a flank; and the shift found back from them. */
class MeasuresTest {
    private static final int GEARS = 300;

    @Test
    void spansAreWhatJawsFindOnThePointsOfTheFlanks() {
        Random random = new Random(6);
        for (int count = 0; count < GEARS; count++) {
            InvoluteGear gear = drawn(random);
            int teeth = gear.spanTeeth();
            Section section = new Section(gear);
            double widest = 0;
            double widestRoll = section.roll(0.52 * Math.max(gear.tipMm(), gear.rootMm()));
            for (double roll = 0; roll < widestRoll; roll += 1e-4) {
                double radius = section.baseRadius * Math.hypot(1, roll);
                double flank = (teeth - 1) * Math.PI / gear.teeth() + halfBetweenJaws(gear, section, radius);
                widest = Math.max(widest, 2 * radius * Math.sin(flank));
            }
            double transverse = gear.spanMm(teeth) / Math.cos(Math.toRadians(gear.baseHelixDeg()));
            assertEquals(transverse, widest, 1e-5 * gear.moduleMm(), gear.toString());
            assertEquals(gear.shift(), gear.withShift(0).shiftFromSpan(teeth, gear.spanMm(teeth)), 1e-9);
        }
    }

    @Test
    void overPinsIsWherePinsTouchThePointsOfTheFlanks() {
        Random random = new Random(7);
        for (int count = 0; count < GEARS; count++) {
            InvoluteGear gear = drawn(random);
            double pinMm = gear.usualPinMm();
            double measured = gear.overPinsMm(pinMm).orElseThrow();
            double apart = gear.isInternal() ? measured + pinMm : measured - pinMm;
            double odd = gear.teeth() % 2 == 0 ? 1 : Math.cos(Math.PI / 2 / gear.teeth());
            assertEquals(
                    pinMm / Math.cos(Math.toRadians(gear.baseHelixDeg())) / 2,
                    fromFlank(gear, apart / odd / 2),
                    1e-6 * gear.moduleMm(),
                    gear.toString());
            assertEquals(
                    gear.shift(),
                    gear.withShift(0).shiftFromOverPins(pinMm, measured).orElseThrow(),
                    1e-9);
        }
    }

    @Test
    void aPinTooSmallToTouchAnInvoluteMeasuresNothing() {
        assertTrue(SomeGears.spur(2, 20, 0).overPinsMm(0.5).isEmpty());
        assertTrue(SomeGears.spur(2, 20, 0).shiftFromOverPins(3.5, 20).isEmpty());
    }

    /** In the transverse section, from the middle of a space at this radius. */
    private static double fromFlank(InvoluteGear gear, double radiusOfPin) {
        Section section = new Section(gear);
        double least = Double.POSITIVE_INFINITY;
        for (double roll = 0; roll < 2; roll += 1e-4) {
            double radius = section.baseRadius * Math.hypot(1, roll);
            double fromSpace = Math.PI / gear.teeth() - section.halfTooth(radius);
            double along = radius * Math.cos(fromSpace) - radiusOfPin;
            least = Math.min(least, Math.hypot(along, radius * Math.sin(fromSpace)));
        }
        return least;
    }

    private static double halfBetweenJaws(InvoluteGear gear, Section section, double radius) {
        double tooth = section.halfTooth(radius);
        return gear.isInternal() ? Math.PI / gear.teeth() - tooth : tooth;
    }

    private static InvoluteGear drawn(Random random) {
        boolean ring = random.nextInt(4) == 0;
        double helixDeg = ring || random.nextBoolean() ? 0 : 30 * random.nextDouble();
        return InvoluteGear.of(
                ring ? GearForm.INTERNAL : GearForm.EXTERNAL,
                15 + random.nextInt(40),
                1 + random.nextInt(4),
                random.nextBoolean() ? 20 : 14.5,
                helixDeg,
                0.5 * random.nextDouble());
    }
}
