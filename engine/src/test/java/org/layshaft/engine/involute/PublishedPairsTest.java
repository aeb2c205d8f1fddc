package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.involute.SomeGears.helical;
import static org.layshaft.engine.involute.SomeGears.ring;
import static org.layshaft.engine.involute.SomeGears.spur;
import static org.layshaft.engine.involute.SomeGears.withoutBacklash;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.GearForm;

/**
 * Complete pairs from a gear makers' technical reference (Kohara Gear Industry, Gear Technical Reference, sections 4 and
 * 10); from memory, recomputed. That reference keeps the clearance by shortening the tips.
 */
class PublishedPairsTest {

    @Test
    void g01_standardSpur() {
        InvolutePair pair = withoutBacklash(spur(3, 12, 0), spur(3, 24, 0));
        assertEquals(54.000, pair.centreMm(), 5e-4);
        diameters(pair.first(), 36.000, 33.829, 42.000, 28.500);
        diameters(pair.second(), 72.000, 67.658, 78.000, 64.500);
        // recomputed, not printed; both flanks true down to the root, which twelve teeth cut by a rack are not
        assertEquals(1.511, pair.contactRatioByTips(), 5e-4);
        assertTrue(pair.first().isUndercut());
        assertTrue(pair.transverseContactRatio() < 1.4);
    }

    @Test
    void g02_shiftedSpurByItsShifts() {
        InvolutePair pair = withoutBacklash(spur(3, 12, 0.6), spur(3, 24, 0.36)).withShortenedTips();
        assertEquals(0.034316, Involute.of(pair.workingAngle()), 5e-7);
        assertEquals(26.0886, pair.workingPressureAngleDeg(), 5e-5);
        assertEquals(0.83329, (pair.centreMm() - 54) / 3, 5e-6);
        assertEquals(56.4999, pair.centreMm(), 5e-5);
        assertEquals(37.667, pair.workingMmOfFirst(), 5e-4);
        assertEquals(75.333, pair.workingMmOfSecond(), 5e-4);
        diameters(pair.first(), 36.000, 33.8289, 44.840, 32.100);
        diameters(pair.second(), 72.000, 67.6579, 79.400, 66.660);
        assertEquals(6.370, (pair.first().tipMm() - pair.first().rootMm()) / 2, 5e-4);
        assertEquals(0.75, pair.tipClearanceFirstMm(), 1e-9);
        assertEquals(0.75, pair.tipClearanceSecondMm(), 1e-9);
        assertEquals(1.202, pair.contactRatioByTips(), 5e-4); // recomputed, not printed
    }

    @Test
    void g03_shiftedSpurByItsCentreDistance() {
        assertEquals(
                0.9600,
                InvolutePair.shiftSumAt(spur(3, 12, 0), spur(3, 24, 0), 56.4999).orElseThrow(),
                5e-5);
        InvolutePair pair = new InvolutePair(spur(3, 12, 0.6), spur(3, 24, 0.36), 56.4999);
        assertEquals(26.0886, pair.workingPressureAngleDeg(), 5e-5);
        assertEquals(0, pair.normalBacklashMm(), 1e-4);
    }

    @Test
    void g04_shiftedInternalPair() {
        InvolutePair pair = withoutBacklash(spur(3, 16, 0), ring(3, 24, 0.5));
        assertEquals(0.060401, Involute.of(pair.workingAngle()), 5e-7);
        assertEquals(31.0937, pair.workingPressureAngleDeg(), 1e-4);
        assertEquals(0.389423, (pair.centreMm() - 12) / 3, 5e-7); // printed 0.389426, from a rounded angle
        assertEquals(13.1683, pair.centreMm(), 5e-5);
        assertEquals(52.673, pair.workingMmOfFirst(), 5e-4);
        assertEquals(79.010, pair.workingMmOfSecond(), 5e-4);
        diameters(pair.first(), 48.000, 45.105, 54.000, 40.500);
        diameters(pair.second(), 72.000, 67.658, 69.000, 82.500);
        assertEquals(6.75, (pair.second().rootMm() - pair.second().tipMm()) / 2, 5e-4);
    }

    @Test
    void g05_shiftedHelicalByItsShifts() {
        InvolutePair pair = withoutBacklash(helical(3, 30, 12, 0.09809), helical(3, 30, 60, 0))
                .withShortenedTips();
        assertEquals(22.79588, pair.first().transversePressureAngleDeg(), 5e-6);
        assertEquals(0.023405, Involute.of(pair.workingAngle()), 5e-7);
        assertEquals(23.1126, pair.workingPressureAngleDeg(), 1e-4);
        assertEquals(125.000, pair.centreMm(), 5e-4);
        assertEquals(41.667, pair.workingMmOfFirst(), 5e-4);
        assertEquals(208.333, pair.workingMmOfSecond(), 6e-4);
        diameters(pair.first(), 41.569, 38.322, 48.153, 34.657);
        diameters(pair.second(), 207.846, 191.611, 213.842, 200.346);
    }

    @Test
    void g06_shiftedHelicalByItsCentreDistance() {
        assertEquals(
                0.09809,
                InvolutePair.shiftSumAt(helical(3, 30, 12, 0), helical(3, 30, 60, 0), 125)
                        .orElseThrow(),
                1e-5);
    }

    @Test
    void g07_shiftedHelicalInTheTransverseSystem() {
        double cosine = Math.cos(Math.toRadians(30));
        double normalAngleDeg = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(20)) * cosine));
        // shifts, addendum and dedendum are told in transverse modules; a normal one is shorter by the cosine
        BasicRack rack = new BasicRack(1 / cosine, 1.25 / cosine, 0.38);
        InvolutePair pair = withoutBacklash(
                        transverse(12, 0.34462 / cosine, normalAngleDeg, rack), transverse(60, 0, normalAngleDeg, rack))
                .withShortenedTips();
        assertEquals(21.3975, pair.workingPressureAngleDeg(), 5e-5);
        assertEquals(0.33333, (pair.centreMm() - 108) / 3, 5e-6);
        assertEquals(109.0000, pair.centreMm(), 5e-5);
        // recomputed, not printed
        assertEquals(36.333, pair.workingMmOfFirst(), 5e-4);
        assertEquals(181.667, pair.workingMmOfSecond(), 5e-4);
        assertEquals(44.000, pair.first().tipMm(), 5e-4);
        assertEquals(185.932, pair.second().tipMm(), 5e-4);
        assertEquals(30.568, pair.first().rootMm(), 5e-4);
        assertEquals(172.500, pair.second().rootMm(), 5e-4);
    }

    private static InvoluteGear transverse(int teeth, double shift, double normalAngleDeg, BasicRack rack) {
        return new InvoluteGear(
                GearForm.EXTERNAL,
                teeth,
                3 * Math.cos(Math.toRadians(30)),
                normalAngleDeg,
                30,
                shift,
                rack,
                OptionalDouble.empty());
    }

    /** As printed, within one unit of the last digit. */
    private static void diameters(InvoluteGear gear, double reference, double base, double tip, double root) {
        assertAll(
                () -> assertEquals(reference, gear.referenceMm(), 1e-3),
                () -> assertEquals(base, gear.baseMm(), 1e-3),
                () -> assertEquals(tip, gear.tipMm(), 1e-3),
                () -> assertEquals(root, gear.rootMm(), 1e-3));
    }
}
