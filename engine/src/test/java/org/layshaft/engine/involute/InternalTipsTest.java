package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.involute.SomeGears.ring;
import static org.layshaft.engine.involute.SomeGears.spur;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether the tips of pinion and ring pass each other, held against following the tip corners step by step. */
class InternalTipsTest {
    /** Nearer than this to touching, steps of this size do not decide. */
    private static final double UNDECIDED_MM = 0.01;

    private static final double STEP = 1e-4;

    @Test
    void cornersFollowedStepByStepCatchOrPassAsComputed() {
        Random random = new Random(4);
        int catching = 0;
        int barred = 0;
        for (int count = 0; count < 300; count++) {
            int teeth = 14 + random.nextInt(30);
            InvoluteGear pinion = spur(2, teeth, random.nextDouble() * 0.6);
            InvoluteGear ring = ring(2, teeth + 5 + random.nextInt(25), random.nextDouble() * 0.6);
            if (ring.tipMm() <= ring.baseMm()
                    || InvolutePair.centreMmWithoutBacklash(pinion, ring).isEmpty()) {
                continue;
            }
            InvolutePair pair = SomeGears.withoutBacklash(pinion, ring);
            InternalTips tips = InternalTips.of(pair);
            Corners corners = new Corners(pair);
            if (Math.abs(tips.runningGapMm()) > UNDECIDED_MM) {
                assertEquals(tips.runningGapMm() < 0, corners.leastRunningGap() < 0, "running: " + pair);
                catching += tips.runningGapMm() < 0 ? 1 : 0;
            }
            if (Math.abs(tips.radialEntryGapMm()) > UNDECIDED_MM) {
                assertEquals(tips.radialEntryGapMm() < 0, corners.leastRadialGap() < 0, "radial: " + pair);
                barred += tips.radialEntryGapMm() < 0 ? 1 : 0;
            }
        }
        assertTrue(catching > 10, catching + " catch");
        assertTrue(barred > 10, barred + " barred");
    }

    /** The pinion's leading tip corner, and the tip corner of the ring's tooth ahead of it. */
    private static final class Corners {
        private final InvolutePair pair;
        private final Section pinion;
        private final Section ring;
        private final double toothAtNoTurn;

        Corners(InvolutePair pair) {
            this.pair = pair;
            RolledPair rolled = new RolledPair(pair.first(), pair.second(), pair.centreMm());
            pinion = new Section(pair.first());
            ring = new Section(pair.second());
            toothAtNoTurn = rolled.secondTooth(0);
        }

        /** As an angle at the ring's axis, while the pinion's corner is among the ring's teeth. */
        double leastRunningGap() {
            double least = 1;
            for (double turn = 0; turn < Math.PI / 2; turn += STEP) {
                double angle = turn + pinion.halfTooth(pinion.tipRadius);
                double x = pair.centreMm() + pinion.tipRadius * Math.cos(angle);
                double y = pinion.tipRadius * Math.sin(angle);
                double radius = Math.hypot(x, y);
                if (radius >= ring.tipRadius) {
                    least = Math.min(least, tooth(turn) - ring.halfTooth(radius) - Math.atan2(y, x));
                }
            }
            return least;
        }

        /** Across the line of centres, along which the pinion moves: how far its corner stays below the ring's. */
        double leastRadialGap() {
            double least = 1;
            for (double turn = 0; turn < Math.PI / 2 - pinion.halfTooth(pinion.tipRadius); turn += STEP) {
                double ofPinion = pinion.tipRadius * Math.sin(turn + pinion.halfTooth(pinion.tipRadius));
                double ofRing = ring.tipRadius * Math.sin(tooth(turn) - ring.halfTooth(ring.tipRadius));
                least = Math.min(least, ofRing - ofPinion);
            }
            return least;
        }

        private double tooth(double turn) {
            return toothAtNoTurn + turn * pinion.teeth / ring.teeth;
        }
    }
}
