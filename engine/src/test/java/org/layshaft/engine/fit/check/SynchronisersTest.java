package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;
import static org.layshaft.engine.fit.check.NearMiss.assertOutcome;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

class SynchronisersTest {
    /**
     * tan 5.7106 = 0.1. With 0.1 and a cone of 72 mm at 6.5 degrees, points on 86 mm are blocked from 47.804 degrees on.
     * A tooth of the ring is 86 pi / 42 = 6.4328 mm.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            clutching-count      | second      | clutching/teeth          | 42     | 43
            clutching-diameter   | second      | clutching/diameter_mm    | 86     | 86.1
            clutching-chamfer    | second      | clutching/chamfer_deg    | 52.5   | 45
            clutching-back-taper | 1-2-sleeve  | sliding/back_taper_deg   | 3.5    | 0
            cone-angle           | second      | cone/half_angle_deg      | 6.55   | 6.551
            cone-angle           | second      | cone/half_angle_deg      | 6.45   | 6.449
            cone-diameter        | second      | cone/diameter_mm         | 72.05  | 72.051
            cone-diameter        | second      | cone/diameter_mm         | 71.95  | 71.949
            cone-type            | second      | cone/type                | single | double
            ring-reserve         | second-ring | ring/reserve_mm          | 0.5    | 0.499
            self-release         | second-ring | cone/half_angle_deg      | 5.711  | 5.710
            self-release         | second-ring | cone/friction            | 0.1139 | 0.1140
            ring-blocks          | second-ring | clutching/chamfer_deg    | 47.81  | 47.80
            ring-count           | second-ring | clutching/teeth          | 42     | 41
            ring-diameter        | second-ring | clutching/diameter_mm    | 86     | 85.9
            ring-chamfer         | second-ring | clutching/chamfer_deg    | 52.5   | 52.4
            key-slots            | second-ring | ring/slots               | 3      | 4
            key-slot-width       | second-ring | ring/slot_mm             | 9      | 8.99
            key-slot-width       | second-ring | ring/slot_mm             | 15.432 | 15.434
            key-width            | 1-2-keys    | key/width_mm             | 8.98   | 8.99
            key-width            | 1-2-keys    | key/width_mm             | 8.6    | 8.59
            sliding-count        | 1-2-hub     | sliding/teeth            | 42     | 39
            sliding-diameter     | 1-2-hub     | sliding/diameter_mm      | 86     | 85
            fork-play            | 1-2-fork    | pad/width_mm             | 9.15   | 9.16
            fork-play            | 1-2-fork    | pad/width_mm             | 8.2    | 8.19
            groove-bottom        | 1-2-fork    | pad/span_mm              | 96     | 95.99
            rail-diameter        | 1-2-fork    | rail/diameter_mm         | 14     | 15
            """)
    void synchroniserAndForkMustSuit(String check, String place, String fact, String holds, String fails) {
        assertBetween(FittingBox.phalarope(), check, place, "", fact, holds, fails);
    }

    /** 0.04 mm on the diameter is 0.02 / tan 6.5 = 0.1755 mm along the axis. */
    @Test
    void aThinnerConeTakesFromTheReserve() {
        FittingBox thinner = FittingBox.phalarope().with("second", Fact.of(FactName.CONE_MM, 71.96));
        assertBetween(thinner, "ring-reserve", "second-ring", "", "ring/reserve_mm", "0.676", "0.675");
    }

    /** Y-09: new rings of workshop manuals, from the least to the most, are none of them worn out; 0.5 mm is the limit. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.7, 0.9, 0.925, 1.0, 1.07, 1.17, 1.2, 1.27, 1.35, 1.7, 1.87, 2.03, 2.16})
    void y09NewRings(double reserveMm) {
        FittingBox box = FittingBox.phalarope().with("second-ring", Fact.of(FactName.RESERVE_MM, reserveMm));
        assertOutcome(Outcome.HOLDS, box, "ring-reserve");
    }

    /** Y-07: friction 0.1, 6.5 degrees, radii 30 and 34 mm, points of 52.5 degrees: 0.02650 over 0.02107. */
    @Test
    void y07BlockingOfTheReferenceRing() {
        FittingBox reference = FittingBox.phalarope()
                .with("second-ring", Fact.of(FactName.CONE_MM, 60))
                .with("second-ring", Fact.of(FactName.CLUTCHING_MM, 68));
        Judgement blocks = reference.judged("ring-blocks").stream()
                .filter(judgement -> judgement.meeting().other().equals("second-ring"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.02650 / 0.02107, blocks.figures().get(0).number(), 5e-4);
    }

    /** With half the friction a single cone does not block, and two surfaces make up for it. */
    @Test
    void moreConesBlockHarder() {
        FittingBox slippery = FittingBox.phalarope().with("second-ring", Fact.of(FactName.FRICTION, 0.05));
        assertOutcome(Outcome.FAILS, slippery, "ring-blocks");
        assertOutcome(
                Outcome.HOLDS, slippery.with("second-ring", Fact.of(FactName.CONE_TYPE, "double")), "ring-blocks");
        assertOutcome(
                Outcome.HOLDS, slippery.with("second-ring", Fact.of(FactName.CONE_TYPE, "triple")), "ring-blocks");
    }

    /** A cone of no angle at all is a slip of the pen. */
    @Test
    void aConeThatCannotBeFailsWithTheReason() {
        FittingBox flat = FittingBox.phalarope().with("second-ring", Fact.of(FactName.CONE_DEG, 0));
        Judgement failing = flat.judged("ring-blocks").stream()
                .filter(Judgement::fails)
                .findFirst()
                .orElseThrow();
        assertEquals(
                "The cone angle is 0 degrees. It must be more than 0 and below 90, from axis to surface.",
                failing.remark());
    }
}
