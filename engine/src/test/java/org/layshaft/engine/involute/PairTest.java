package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.involute.SomeGears.helical;
import static org.layshaft.engine.involute.SomeGears.ring;
import static org.layshaft.engine.involute.SomeGears.spur;
import static org.layshaft.engine.involute.SomeGears.withoutBacklash;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.involute.Interference.Kind;

/** What must hold between the answers about a pair. */
class PairTest {

    @Test
    void whichGearIsFirstChangesNothingButWhoseNumbersAreWhose() {
        DrawnPairs drawn = new DrawnPairs(3);
        for (int count = 0; count < 500; count++) {
            InvolutePair pair = drawn.next();
            InvolutePair turned = new InvolutePair(pair.second(), pair.first(), pair.centreMm());
            assertEquals(pair.transverseContactRatio(), turned.transverseContactRatio(), 1e-9);
            assertEquals(pair.circumferentialBacklashMm(), turned.circumferentialBacklashMm(), 1e-9);
            assertEquals(pair.tipClearanceFirstMm(), turned.tipClearanceSecondMm(), 1e-9);
            assertEquals(pair.workingMmOfFirst(), turned.workingMmOfSecond(), 1e-9);
            assertEquals(
                    pair.slidingAtEnd().specificOfFirst(),
                    turned.slidingAtStart().specificOfSecond(),
                    1e-9);
            assertEquals(
                    pair.slidingAtEnd().mmPerSecond(1000 * pair.second().teeth()),
                    turned.slidingAtStart().mmPerSecond(1000 * pair.first().teeth()),
                    1e-6);
            assertEquals(pair.interference().size(), turned.interference().size());
        }
    }

    @Test
    void theShiftsForADistanceGiveThatDistance() {
        Random random = new Random(5);
        for (int count = 0; count < 500; count++) {
            boolean internal = random.nextBoolean();
            InvoluteGear pinion = spur(2, 15 + random.nextInt(20), 0);
            InvoluteGear mate = internal ? ring(2, 60, 0) : spur(2, 40, 0);
            double reference = pinion.teeth() * (internal ? -1 : 1) + mate.teeth();
            double centreMm = reference + random.nextDouble() - 0.3;
            double sum = InvolutePair.shiftSumAt(pinion, mate, centreMm).orElseThrow();
            assertEquals(
                    centreMm,
                    InvolutePair.centreMmWithoutBacklash(pinion, mate.withShift(sum))
                            .orElseThrow(),
                    1e-9);
        }
    }

    @Test
    void backlashOpensWithTheDistanceAndClosesInARing() {
        InvolutePair external = withoutBacklash(spur(2, 20, 0.2), spur(2, 40, 0.1));
        InvolutePair wider = new InvolutePair(external.first(), external.second(), external.centreMm() + 0.05);
        // nearly 2 tan a for each mm
        assertEquals(0.05 * 2 * Math.tan(Math.toRadians(22)), wider.circumferentialBacklashMm(), 2e-3);
        assertTrue(wider.normalBacklashMm() < wider.circumferentialBacklashMm());
        InvolutePair inRing = withoutBacklash(spur(2, 20, 0), ring(2, 50, 0));
        assertTrue(new InvolutePair(inRing.first(), inRing.second(), inRing.centreMm() + 0.05).normalBacklashMm() < 0);
    }

    @Test
    void atThePitchPointNothingSlides() {
        InvolutePair pair = withoutBacklash(helical(2.5, 25, 19, 0.3), helical(2.5, 25, 37, -0.1));
        Sliding sliding = Sliding.at(pair, pair.line().pitchPoint());
        assertEquals(0, sliding.mmPerRadian(), 1e-12);
        assertEquals(0, sliding.specificOfFirst(), 1e-12);
        assertEquals(0, sliding.specificOfSecond(), 1e-12);
        assertTrue(pair.slidingAtStart().specificOfFirst() < 0);
        assertTrue(pair.slidingAtEnd().specificOfSecond() < 0);
    }

    @Test
    void overlapAddsToTheContactRatio() {
        InvolutePair pair = withoutBacklash(helical(2.5, 30, 19, 0), helical(2.5, 30, 37, 0));
        assertEquals(20 * 0.5 / (Math.PI * 2.5), pair.overlapRatio(20), 1e-12);
        assertEquals(pair.transverseContactRatio() + pair.overlapRatio(20), pair.totalContactRatio(20), 1e-12);
    }

    @Test
    void interferenceTellsWhichGearAndBothNumbers() {
        InvolutePair standard = withoutBacklash(spur(3, 12, 0), spur(3, 60, 0));
        Interference fillet = standard.interference().get(0);
        assertEquals(Kind.FILLET_OF_FIRST, fillet.kind());
        assertTrue(fillet.actualMm() < fillet.limitMm(), fillet.toString());
        assertTrue(withoutBacklash(spur(3, 20, 0.3), spur(3, 60, 0))
                .withShortenedTips()
                .interference()
                .isEmpty());
        InvolutePair bottoming = withoutBacklash(spur(3, 30, 0).withTipMm(98.5), spur(3, 60, 0));
        assertTrue(bottoming.interference().contains(new Interference(Kind.TIP_OF_FIRST_IN_ROOT, -0.5, 0)));
        assertTrue(withoutBacklash(spur(2, 30, 0), ring(2, 34, 0)).interference().stream()
                .anyMatch(found -> found.kind() == Kind.TIPS_CROSS));
    }

    @Test
    void diametralPitchAndModule() {
        assertEquals(2.54, new DiametralPitch(10).moduleMm(), 1e-12);
        assertEquals(new DiametralPitch(8), DiametralPitch.ofModuleMm(3.175));
    }
}
