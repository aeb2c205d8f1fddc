package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.involute.SomeGears.spur;
import static org.layshaft.engine.involute.SomeGears.withAddendum;
import static org.layshaft.engine.involute.SomeGears.withoutBacklash;

import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.GearForm;

/**
 * Worked examples of textbooks, read in students' transcriptions of them: R. S. Khurmi and J. K. Gupta, Theory of
 * Machines; T. Bevan, The Theory of Machines; B. K. Sarkar, Theory of Machines; U. C. Jindal, Machine Design. Where the
 * transcription is wrong the corrected number stands here and the printed one beside it.
 */
class PublishedTextbooksTest {

    /** Jindal 25-1, p. 669. */
    @Test
    void g15_standardPair() {
        InvolutePair pair = withoutBacklash(spur(5, 25, 0), spur(5, 60, 0));
        assertEquals(125, pair.first().referenceMm(), 1e-9);
        assertEquals(300, pair.second().referenceMm(), 1e-9);
        assertEquals(212.5, pair.centreMm(), 1e-9);
        assertEquals(5, (pair.first().tipMm() - pair.first().referenceMm()) / 2, 1e-9);
        assertEquals(6.25, (pair.first().referenceMm() - pair.first().rootMm()) / 2, 1e-9);
        assertEquals(1.25, pair.tipClearanceFirstMm(), 1e-9);
        assertEquals(1.25, pair.tipClearanceSecondMm(), 1e-9);
    }

    /** Khurmi and Gupta 12.3, p. 398: path 52.3, arc 55.61, ratio 1.5. */
    @Test
    void g17_pathArcAndContactRatio() {
        InvolutePair pair = external(12, 20, 30, 80, 10);
        assertEquals(52.3, pair.pathOfContactMm(), 0.05);
        assertEquals(55.61, pair.pathOfContactMm() / Math.cos(Math.toRadians(20)), 5e-3);
        assertEquals(1.475, pair.contactRatioByTips(), 5e-4); // printed 1.5
    }

    /** Khurmi and Gupta 12.4, p. 399: pitch line at 1.2 m/s. */
    @Test
    void g18_angleInContactAndSliding() {
        InvolutePair pair = external(5, 20, 20, 40, 5);
        double radians = pair.pathOfContactMm() / (pair.first().baseMm() / 2);
        assertEquals(29.43, Math.toDegrees(radians), 0.02);
        double turnsPerMinute = 1200 / 50.0 * 30 / Math.PI;
        // printed for the tip of the wheel against the root of the pinion, all of it true involute
        double fastest = Sliding.at(pair, pair.line().matesTip()).mmPerSecond(turnsPerMinute);
        assertEquals(455.3, fastest, 0.3);
        assertEquals(1.635, pair.contactRatioByTips(), 5e-4);
    }

    /** Khurmi and Gupta 12.7, p. 403: pinion of 18 in an annulus of 72. */
    @Test
    void g21_pathOfContactInAnAnnulus() {
        InvolutePair pair = withoutBacklash(
                withAddendum(GearForm.EXTERNAL, 4, 20, 18, 8.5), withAddendum(GearForm.INTERNAL, 4, 20, 72, 3.5));
        assertEquals(28.04, pair.pathOfContactMm(), 5e-3);
    }

    /** Sarkar 4.1, p. 133. */
    @Test
    void g22_arcOfContact() {
        InvolutePair pair = external(5, 20, 30, 48, 5);
        assertEquals(26.7, pair.pathOfContactMm() / Math.cos(Math.toRadians(20)), 0.05);
        assertEquals(1.7005, pair.contactRatioByTips(), 5e-5);
    }

    /** Bevan 10.4, p. 334: fewest teeth of full depth at 20 degrees. */
    @Test
    void g23_fewestTeethWithoutInterference() {
        assertTrue(spur(1, 17, 0).isUndercut());
        assertFalse(spur(1, 18, 0).isUndercut());
        assertEquals(0, spur(1, 17, 0).smallestShift().orElseThrow(), 0.01); // 17.10 before rounding up
        assertFalse(matesTipStaysOutside(12, 12));
        assertTrue(matesTipStaysOutside(13, 13));
        assertFalse(matesTipStaysOutside(14, 42));
        assertTrue(matesTipStaysOutside(15, 45));
    }

    /** Bevan 10.6, p. 338, in modules; printed 6.092, 4.97 and 1.685, from half a tooth lost. */
    @Test
    void g24_pathAndArcAtTwoPressureAngles() {
        InvolutePair shallow = external(1, 14.5, 28, 45, 1);
        assertEquals(6.103, shallow.pathOfContactMm(), 5e-4);
        assertEquals(2.007, shallow.contactRatioByTips(), 5e-4);
        InvolutePair steep = external(1, 20, 28, 45, 1);
        assertEquals(4.980, steep.pathOfContactMm(), 5e-4);
        assertEquals(1.687, steep.contactRatioByTips(), 5e-4);
    }

    /** Khurmi and Gupta 12.2, p. 397, prints 6.17, from degrees taken as radians; Sarkar 4.2 prints 6.1. */
    @Test
    void g25_addendumForAnArcOfContact() {
        assertEquals(1.75, external(6, 20, 40, 40, 6.144).contactRatioByTips(), 2e-4);
        assertTrue(external(6, 20, 40, 40, 6.17).contactRatioByTips() > 1.755);
    }

    /** Sarkar 4.6; Khurmi and Gupta 13.3, which prints 99 teeth and so another distance; Bevan 11.3b in inches. */
    @Test
    void g27_g28_g29_twoPairsAtOneCentreDistance() {
        assertEquals(150, standard(4, 15, 60), 1e-9);
        assertEquals(150, standard(2.5, 24, 96), 1e-9);
        assertEquals(200, standard(3.125, 28, 100), 1e-9);
        assertEquals(198.44, standard(3.125, 28, 99), 5e-3);
        assertEquals(200, standard(2.5, 36, 124), 1e-9);
        assertEquals(7 * 25.4, standard(new DiametralPitch(7).moduleMm(), 74, 24), 1e-9);
        assertEquals(7 * 25.4, standard(new DiametralPitch(5).moduleMm(), 52, 18), 1e-9);
    }

    /** ISO 53:1998, from memory; profile A's addendum and dedendum also at SDP/SI, page T-9, read. */
    @Test
    void g32_basicRacks() {
        assertEquals(new BasicRack(1, 1.25, 0.38), BasicRack.A);
        assertEquals(new BasicRack(1, 1.25, 0.30), BasicRack.B);
        assertEquals(new BasicRack(1, 1.25, 0.25), BasicRack.C);
        assertEquals(new BasicRack(1, 1.40, 0.39), BasicRack.D);
    }

    private static double standard(double moduleMm, int teeth, int others) {
        return InvolutePair.centreMmWithoutBacklash(spur(moduleMm, teeth, 0), spur(moduleMm, others, 0))
                .orElseThrow();
    }

    private static boolean matesTipStaysOutside(int pinion, int wheel) {
        return withoutBacklash(spur(1, pinion, 0), spur(1, wheel, 0)).line().matesTip() >= 0;
    }

    private static InvolutePair external(double moduleMm, double angleDeg, int pinion, int wheel, double addendumMm) {
        return withoutBacklash(
                withAddendum(GearForm.EXTERNAL, moduleMm, angleDeg, pinion, addendumMm),
                withAddendum(GearForm.EXTERNAL, moduleMm, angleDeg, wheel, addendumMm));
    }
}
