package org.layshaft.engine.synchro;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Cone clutches of R. S. Khurmi and J. K. Gupta, Theory of Machines, chapter 10, read in a transcription; and the blocking
 * condition of R. J. Socin and L. K. Walters, SAE 680008, 1968, from memory.
 */
class PublishedConesTest {

    /** Example 10.34, p. 316; printed 7.8 N m, 4.1 s, 1674 N m, torque and time rounded first. */
    @Test
    void y01_timeAndHeat() {
        Cone cone = Cone.single(15, 75, 0.3);
        double torqueNm = cone.torqueNm(180);
        assertEquals(7.824, torqueNm, 5e-4);
        Synchronising speeding = Synchronising.withoutDrag(13.5 * 0.150 * 0.150, 1000);
        assertEquals(4.066, speeding.timeS(torqueNm).orElseThrow(), 5e-4);
        assertEquals(1665.5, speeding.heatJ(torqueNm).orElseThrow(), 0.05);
        assertEquals(torqueNm, speeding.torqueNm(4.066), 1e-3);
        // the heat of slipping is the energy of motion gained, whatever the torque
        assertEquals(1665.5, speeding.heatJ(3).orElseThrow(), 0.05);
    }

    /** Example 10.32, p. 315. */
    @Test
    void y02_engagingForceAndWidth() {
        Cone cone = Cone.single(12.5, 500, 0.2);
        double torqueNm = torqueNm(45, 1000);
        assertEquals(3540, cone.engagingForceN(torqueNm), 3);
        assertEquals(1860, cone.holdingForceN(torqueNm), 1);
        assertEquals(54.7, cone.widthMm(torqueNm, 0.1), 0.05);
        assertEquals(torqueNm, cone.torqueNm(cone.holdingForceN(torqueNm)), 1e-9);
    }

    /** Example 10.31, p. 314; printed 52.2 and 5006 N, from a rounded speed. */
    @Test
    void y03_widthRadiiAndForce() {
        Cone cone = Cone.single(20, 375, 0.2);
        double torqueNm = torqueNm(90, 1500);
        double widthMm = cone.widthMm(torqueNm, 0.25);
        assertEquals(51.88, widthMm, 5e-3);
        assertEquals(196.4, cone.largeDiameterMm(widthMm) / 2, 0.05);
        assertEquals(178.6, cone.smallDiameterMm(widthMm) / 2, 0.05);
        assertEquals(4978, cone.wornInForceN(widthMm, 0.25), 0.5);
    }

    /** Example 10.33, p. 315: as wide as a third of its radius; printed R 99 and 103.51/94.95. */
    @Test
    void y04_sizeForAPressure() {
        double radiusMm = 99.23;
        Cone cone = Cone.single(15, 2 * radiusMm, 0.15);
        double widthMm = cone.widthMm(torqueNm(22.5, 2000), 0.35);
        assertEquals(radiusMm / 3, widthMm, 5e-3);
        assertEquals(103.51, cone.largeDiameterMm(widthMm) / 2, 5e-3);
        assertEquals(94.95, cone.smallDiameterMm(widthMm) / 2, 5e-3);
    }

    /** No numbers are published with all that they rest on; these are ours. */
    @Test
    void y07_blocking() {
        Cone cone = Cone.single(6.5, 60, 0.1);
        Chamfer chamfer = new Chamfer(52.5, 68, 0.1);
        assertEquals(0.02650, cone.torqueNm(1), 5e-6);
        assertEquals(0.02107, chamfer.indexTorqueNm(1), 5e-6);
        Blocking blocking = new Blocking(cone, chamfer);
        assertTrue(blocking.blocks());
        assertEquals(1.258, blocking.marginRatio(), 5e-4);
        double least = blocking.leastChamferDeg();
        assertTrue(new Blocking(cone, new Chamfer(least + 0.01, 68, 0.1)).blocks());
        assertFalse(new Blocking(cone, new Chamfer(least - 0.01, 68, 0.1)).blocks());
    }

    /** Friction 0.1 lets a ring off from 5.71 degrees on, which is why 6 to 7 are usual. */
    @Test
    void y07_selfRelease() {
        assertEquals(5.71, Cone.single(6.5, 60, 0.1).stickingBelowDeg(), 5e-3);
        assertTrue(Cone.single(6, 60, 0.1).releases());
        assertFalse(Cone.single(5.7, 60, 0.1).releases());
    }

    private static double torqueNm(double powerKw, double rpm) {
        return powerKw * 1000 / (rpm * Math.PI / 30);
    }
}
