package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;
import static org.layshaft.engine.fit.check.NearMiss.assertOutcome;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

class AxleAndSpeedDriveTest {
    /** 45 / 11 = 4.09, 46 / 11 = 4.18; 34 / 11 = 3.09, 33 / 11 = 3.00. The flange is for 3.08 to 4.10. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ring-gear-register    | differential  | ''     | flange/register_mm          | 120   | 119.9
            ring-gear-bolts       | ring-gear     | ''     | flange/bolts                | 10    | 12
            ring-gear-bolt-circle | ring-gear     | ''     | flange/bolt_circle_mm       | 140   | 138
            carrier-ratio         | ring-gear     | ''     | toothing/teeth              | 45    | 46
            carrier-ratio         | ring-gear     | ''     | toothing/teeth              | 34    | 33
            carrier-ratio         | output        | pinion | toothing/teeth              | 10    | 9
            speed-centre          | speed-driven  | ''     | toothing/teeth              | 15    | 16
            speed-centre          | speed-driven  | ''     | toothing/profile_shift      | 0.25  | 0.35
            speed-module          | speed-driven  | ''     | toothing/module_mm          | 1.75  | 1.5
            speed-pressure-angle  | speed-driven  | ''     | toothing/pressure_angle_deg | 20    | 14.5
            speed-helix           | speed-driven  | ''     | toothing/helix_deg          | 18    | 20
            speed-helix           | speed-driven  | ''     | toothing/hand               | right | left
            """)
    void axleAndSpeedDriveMustSuit(
            String check, String place, String feature, String fact, String holds, String fails) {
        assertBetween(FittingBox.phalarope(), check, place, feature, fact, holds, fails);
    }

    /** A break as told of real axles: one flange for 3.08 and down, another for 3.23 and up. */
    @Test
    void gearsGoOnlyOnTheirSideOfTheBreak() {
        FittingBox down = flange(1, 3.08);
        FittingBox up = flange(3.23, 5);
        FittingBox tall = down.with("ring-gear", Fact.of(FactName.TEETH, 37))
                .with("output", "pinion", Fact.of(FactName.TEETH, 12));
        assertOutcome(Outcome.FAILS, down, "carrier-ratio");
        assertOutcome(Outcome.HOLDS, up, "carrier-ratio");
        assertEquals(
                3.0833, tall.judged("carrier-ratio").get(0).figures().get(0).number(), 5e-5);
    }

    @Test
    void aThickRingGearStandsRightOnTheOtherFlange() {
        FittingBox down = flange(1, 3.08);
        assertOutcome(Outcome.HOLDS, down.with("ring-gear", Fact.of(FactName.MADE_FOR_RATIO, 3.08)), "carrier-ratio");
        assertOutcome(Outcome.FAILS, down.with("ring-gear", Fact.of(FactName.MADE_FOR_RATIO, 3.23)), "carrier-ratio");
    }

    /** On parallel shafts the ring gear stands beside its pinion, whatever the ratio. */
    @Test
    void aRingGearOnParallelShaftsKnowsNoBreak() {
        FittingBox parallel = FittingBox.phalarope().with("ring-gear", Fact.of(FactName.FORM, "external"));
        assertEquals(Optional.empty(), parallel.outcome("carrier-ratio"));
    }

    @Test
    void aSpeedDriveAlongsideNeedsOppositeHands() {
        FittingBox alongside =
                always(always(FittingBox.phalarope(), 15, "right", "speed-driving"), 15, "left", "speed-driven");
        assertOutcome(Outcome.HOLDS, alongside, "speed-helix");
        assertOutcome(Outcome.FAILS, alongside.with("speed-driven", Fact.of(FactName.HAND, "right")), "speed-helix");
    }

    /** 0 and 0 come to 0, which is the angle of some drives, and not of this one. */
    @Test
    void straightGearsDoNotRunAcross() {
        FittingBox straight = FittingBox.phalarope()
                .with("speed-driving", Fact.of(FactName.HELIX_DEG, 0))
                .with("speed-driven", Fact.of(FactName.HELIX_DEG, 0));
        assertOutcome(Outcome.FAILS, straight, "speed-helix");
        assertEquals(
                90,
                straight.judged("speed-helix").get(0).missedBy().orElseThrow().number(),
                1e-9);
    }

    /** Across and alongside are both usual: only what was there tells which of them it is. */
    @Test
    void whereNothingIsToldOfThePairThatWasThereAUsualAngleCannotBeTold() {
        FittingBox.Spot driving = new FittingBox.Spot("speed-driving", "");
        FittingBox untold = FittingBox.phalarope().hadNot(driving, FactName.HELIX_DEG);
        assertOutcome(Outcome.UNTOLD, untold, "speed-helix");
        assertOutcome(Outcome.FAILS, untold.with("speed-driven", Fact.of(FactName.HELIX_DEG, 20)), "speed-helix");
    }

    private static FittingBox always(FittingBox box, double helixDeg, String hand, String place) {
        return box.always(place, "", Fact.of(FactName.HELIX_DEG, helixDeg))
                .always(place, "", Fact.of(FactName.HAND, hand));
    }

    private static FittingBox flange(double lowest, double highest) {
        return FittingBox.phalarope()
                .with("differential", Fact.of(FactName.LOWEST_RATIO, lowest))
                .with("differential", Fact.of(FactName.HIGHEST_RATIO, highest));
    }
}
