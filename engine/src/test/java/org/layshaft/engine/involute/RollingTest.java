package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The second road: what the relations say of a pair is held against rolling its flanks by trial. */
class RollingTest {
    private static final int PAIRS = 10_000;

    @Test
    void drawnPairsRollAsComputed() {
        DrawnPairs drawn = new DrawnPairs(20_771);
        int rings = 0;
        for (int count = 0; count < PAIRS; count++) {
            InvolutePair pair = drawn.next();
            String about = count + ": " + pair;
            InvoluteGear first = pair.first();
            InvoluteGear second = pair.second();
            double tight = InvolutePair.centreMmWithoutBacklash(first, second).orElseThrow();
            assertEquals(0, new RolledPair(first, second, tight).backlashMm(), 1e-9, about);

            RolledPair rolled = new RolledPair(first, second, pair.centreMm());
            assertEquals(pair.circumferentialBacklashMm(), rolled.backlashMm(), 1e-9, about);
            double ratio = (pair.isInternal() ? 1.0 : -1.0) * first.teeth() / second.teeth();
            assertEquals(0.01 * ratio, rolled.follows(0.01), 1e-12, about);
            assertEquals(pair.transverseContactRatio(), rolled.contactRatio(), 2e-5, about);
            rings += pair.isInternal() ? 1 : 0;
        }
        assertTrue(rings > PAIRS / 10 && rings < PAIRS / 2, rings + " rings");
    }
}
