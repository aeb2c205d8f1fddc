package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;
import static org.layshaft.engine.fit.check.NearMiss.assertOutcome;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

class TeethComparedTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            tooth-form        | second         | ''     | toothing/form               | external | internal
            normal-module     | second         | ''     | toothing/module_mm          | 2.5      | 2.51
            normal-module     | cluster-second | ''     | toothing/diametral_pitch    | 10.16    | 10.15
            pressure-angle    | second         | ''     | toothing/pressure_angle_deg | 20       | 17.5
            helix-angle       | second         | ''     | toothing/helix_deg          | 22       | 22.01
            helix-hand        | second         | ''     | toothing/hand               | left     | right
            spiral-hand       | ring-gear      | ''     | toothing/hand               | right    | left
            spiral-hand       | ring-gear      | ''     | toothing/helix_deg          | 33       | 0
            face-in-contact   | second         | ''     | toothing/face_mm            | 22       | 21.99
            face-in-contact   | cluster-second | ''     | toothing/face_mm            | 22       | 21.99
            lapped-pair       | ring-gear      | ''     | toothing/lapped_with        | P-4      | P-40
            lapped-pair       | output         | pinion | toothing/lapped_with        | P-10     | P-11
            mounting-distance | ring-gear      | ''     | toothing/mounting_mm        | 60       | 60.01
            mounting-distance | output         | pinion | toothing/mounting_mm        | 110      | 109.99
            axis-offset       | ring-gear      | ''     | toothing/offset_mm          | 30       | 29.99
            """)
    void teethMustAgree(String check, String place, String feature, String fact, String holds, String fails) {
        assertBetween(FittingBox.phalarope(), check, place, feature, fact, holds, fails);
    }

    @Test
    void aFailureTellsBothNumbersAndByHowMuch() {
        Judgement failing =
                FittingBox.phalarope().with("second", Fact.of(FactName.HELIX_DEG, 22.5)).judged("helix-angle").stream()
                        .filter(Judgement::fails)
                        .findFirst()
                        .orElseThrow();
        assertEquals(
                List.of("22.5°", "22°"),
                failing.figures().stream().map(figure -> figure.shown()).toList());
        assertEquals("the second gear P-7", failing.figures().get(0).of());
        assertEquals("0.5°", failing.missedBy().orElseThrow().shown());
    }

    /** A pair for an axle of another offset agrees with itself, and not with the axle. */
    @Test
    void aPairForAnotherOffsetDoesNotServe() {
        FittingBox other = FittingBox.phalarope()
                .with("ring-gear", Fact.of(FactName.OFFSET_MM, 25))
                .with("output", "pinion", Fact.of(FactName.OFFSET_MM, 25));
        assertOutcome(Outcome.FAILS, other, "axis-offset");
    }

    /** The same pinion shaft by its facts, but not the very one. */
    @Test
    void halfOfALappedPairDoesNotServe() {
        FittingBox box = FittingBox.phalarope();
        CataloguePart shaft = box.is().get("output");
        FittingBox another = box.withPart(
                "output",
                new CataloguePart("P-40", shaft.kind(), shaft.name(), shaft.facts(), shaft.features(), shaft.note()));
        assertOutcome(Outcome.FAILS, another, "lapped-pair");
    }

    /** On parallel shafts nobody need say that gears are not lapped; one that is must come with its mate. */
    @Test
    void aLappedGearOnParallelShaftsCountsOnceItIsTold() {
        FittingBox lapped = FittingBox.phalarope()
                .with("second", Fact.of(FactName.LAPPED, "yes"))
                .with("second", Fact.of(FactName.LAPPED_WITH, "P-6"));
        assertOutcome(Outcome.UNTOLD, lapped, "lapped-pair");
        FittingBox told = lapped.with("cluster-second", Fact.of(FactName.LAPPED, "no"));
        assertOutcome(Outcome.HOLDS, told, "lapped-pair");
        assertOutcome(Outcome.FAILS, told.with("second", Fact.of(FactName.LAPPED_WITH, "P-66")), "lapped-pair");
        assertOutcome(Outcome.UNTOLD, told.without("second", FactName.LAPPED), "lapped-pair");
    }

    @Test
    void straightTeethHaveNoHandToLookAt() {
        FittingBox straight = FittingBoxes.straightCut().without("cluster-driven", FactName.HAND);
        assertEquals(Set.of("second", "first"), gears(straight, "helix-hand"));
        FittingBox half = FittingBox.phalarope().without("second", FactName.HELIX_DEG);
        assertOutcome(Outcome.UNTOLD, half, "helix-hand");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "helix-angle",
                "face-in-contact",
                "centre-distance",
                "backlash",
                "transverse-contact",
                "total-contact",
                "tip-clearance",
                "interference",
                "undercut",
                "top-land"
            })
    void bevelGearsAreLeftOut(String check) {
        assertEquals(Set.of("drive", "second", "first"), gears(FittingBox.phalarope(), check));
    }

    @ParameterizedTest
    @ValueSource(strings = {"spiral-hand", "mounting-distance", "axis-offset", "lapped-pair"})
    void gearsOnParallelShaftsAreLeftOut(String check) {
        assertEquals(Set.of("pinion"), gears(FittingBox.phalarope(), check));
    }

    private static Set<String> gears(FittingBox box, String check) {
        assertTrue(box.judged(check).stream().noneMatch(Judgement::fails));
        return box.judged(check).stream()
                .map(judgement -> judgement.meeting().one())
                .collect(Collectors.toSet());
    }
}
