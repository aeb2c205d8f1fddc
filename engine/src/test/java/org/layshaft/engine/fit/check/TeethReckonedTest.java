package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;
import static org.layshaft.engine.fit.check.NearMiss.assertOutcome;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** Limits of {@link SpurPair}, reckoned by hand, at 59.995 to 60.005 mm. */
class TeethReckonedTest {
    /**
     * The distance without backlash: inv a' = inv 20 + 2 tan 20 (x1 + x2) / 60 with both x = -0.047 / (4 sin 20) =
     * -0.03436 gives 59.8614 mm. Backlash: 0.0964 mm at 59.995, 0.1037 at 60.005. Tips that leave a contact ratio of 1 and
     * of 1.2 at 60.005: 40.6207 and 41.5736 mm. Clearance of 0.2 mm at 59.995 to roots of 75 and 35 mm: tips of 44.59 and
     * 84.59. The wheel's tip reaches the end of the pinion's involute, 0.9925 mm along the line of action, at 84.7022.
     * The pinion's teeth are 0.4 mm wide at 45.5777.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            centre-distance    | box-case       | input/countershaft | centre/distance_mm         | 59.8664 | 59.8663
            centre-distance    | box-case       | input/countershaft | centre/tolerance_mm        | 0.1386  | 0.1387
            backlash           | cluster-driven | ''                 | toothing/backlash_least_mm | 0.0963  | 0.0964
            backlash           | input          | drive              | toothing/backlash_most_mm  | 0.1037  | 0.1036
            backlash           | box-case       | input/countershaft | centre/distance_mm         | 60.13   | 60.14
            transverse-contact | input          | drive              | toothing/tip_mm            | 40.621  | 40.620
            total-contact      | input          | drive              | toothing/tip_mm            | 41.574  | 41.573
            tip-clearance      | input          | drive              | toothing/tip_mm            | 44.59   | 44.60
            tip-clearance      | cluster-driven | ''                 | toothing/tip_mm            | 84.59   | 84.60
            interference       | cluster-driven | ''                 | toothing/tip_mm            | 84.702  | 84.703
            top-land           | input          | drive              | toothing/tip_mm            | 45.577  | 45.578
            """)
    void limitsAreWhereTheyAreByHand(
            String check, String place, String feature, String fact, String holds, String fails) {
        assertBetween(SpurPair.in(FittingBox.phalarope()), check, place, feature, fact, holds, fails);
    }

    /** A rack with rounded corners of 0.38 modules is straight down to 1.00003: 17 teeth need a shift of 0.00566. */
    @Test
    void seventeenTeethNeedAlmostNoShift() {
        FittingBox seventeen = SpurPair.in(FittingBox.phalarope())
                .with(SpurPair.PINION, SpurPair.PINION_TEETH, Fact.of(FactName.TEETH, 17));
        assertBetween(
                seventeen,
                "undercut",
                SpurPair.PINION,
                SpurPair.PINION_TEETH,
                "toothing/profile_shift",
                "0.0057",
                "0.0056");
    }

    /** G-23, published: with a rack at 20 degrees, 18 whole teeth are the fewest. */
    @Test
    void g23FewestTeethWithARack() {
        assertBetween(
                SpurPair.in(FittingBox.phalarope()),
                "undercut",
                SpurPair.PINION,
                SpurPair.PINION_TEETH,
                "toothing/teeth",
                "18",
                "17");
    }

    /** An overlap ratio is b sin 22 / 2.5 pi: 1.0493 for the narrower face of 22 mm. */
    @Test
    void overlapAddsToTheTransverseRatioAndStraightTeethHaveNone() {
        Judgement helical = of(FittingBox.phalarope(), "total-contact", "drive");
        assertEquals(1.0493, helical.figures().get(1).number(), 5e-5);
        assertEquals(
                helical.figures().get(2).number(),
                helical.figures().get(0).number() + helical.figures().get(1).number(),
                1e-12);
        FittingBox straight = FittingBoxes.straightCut();
        assertEquals(0, of(straight, "total-contact", "drive").figures().get(1).number());
        assertOutcome(Outcome.HOLDS, straight.without("cluster-driven", FactName.FACE_MM), "total-contact");
        assertOutcome(
                Outcome.UNTOLD, FittingBox.phalarope().without("cluster-driven", FactName.FACE_MM), "total-contact");
    }

    /** Told by the profile shift alone, teeth count as thinned for half of the backlash: least 0.06, middle 0.13 mm. */
    @Test
    void unmeasuredTeethAreThinnedForTheirBacklash() {
        FittingBox unmeasured = SpurPair.in(FittingBox.phalarope())
                .without(SpurPair.GEAR, FactName.SPAN_MM)
                .without(SpurPair.GEAR, FactName.SPAN_TEETH)
                .without(new FittingBox.Spot(SpurPair.PINION, SpurPair.PINION_TEETH), FactName.SPAN_MM)
                .without(new FittingBox.Spot(SpurPair.PINION, SpurPair.PINION_TEETH), FactName.SPAN_TEETH);
        Judgement backlash = of(unmeasured, "backlash", "drive");
        // 2 x 0.005 tan 20 = 0.00364 to either side of the middle
        assertEquals(0.1264, backlash.figures().get(0).number(), 1e-4);
        assertEquals(0.1336, backlash.figures().get(1).number(), 1e-4);
        // 0.06 / (2 tan 20) = 0.0824 less than 60
        assertEquals(
                59.9173,
                of(unmeasured, "centre-distance", "drive").figures().get(0).number(),
                5e-4);
        assertOutcome(Outcome.UNTOLD, unmeasured.without(SpurPair.GEAR, FactName.BACKLASH_LEAST_MM), "centre-distance");
    }

    @Test
    void whatFailsTellsByHowMuch() {
        FittingBox near = SpurPair.in(FittingBox.phalarope())
                .with("box-case", SpurPair.SHAFTS, Fact.of(FactName.CENTRE_MM, 59.8));
        Judgement failing = of(near, "centre-distance", "drive");
        // 59.8614 against 59.795
        assertEquals(0.0664, failing.missedBy().orElseThrow().number(), 5e-5);
        assertEquals("must be at most 59.795 mm", failing.limit().words());
    }

    @Test
    void factsThatMakeNoGearFailWithTheReason() {
        FittingBox bare = SpurPair.in(FittingBox.phalarope()).with(SpurPair.GEAR, Fact.of(FactName.TIP_MM, 70));
        Judgement failing = of(bare, "interference", "drive");
        assertTrue(failing.fails());
        assertTrue(failing.remark().contains("tip diameter is 70 mm"), failing.remark());
    }

    private static Judgement of(FittingBox box, String check, String gear) {
        return box.judged(check).stream()
                .filter(judgement -> judgement.meeting().one().equals(gear))
                .findFirst()
                .orElseThrow();
    }
}
