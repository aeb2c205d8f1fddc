package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;
import static org.layshaft.engine.fit.check.NearMiss.assertOutcome;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

class SeatsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            cut-in-one               | output             | first              | seat/held_by      | bush    | in-one
            gear-held-by             | second             | ''                 | seat/held_by      | needles | bush
            gear-held-by             | output             | second             | seat/held_by      | needles | press
            hub-held-by              | 1-2-hub            | ''                 | seat/held_by      | spline  | press
            needles-inside           | output             | second             | seat/diameter_mm  | 44.989  | 44.988
            needles-inside           | output             | second             | seat/diameter_mm  | 45      | 45.001
            needles-outside          | second             | ''                 | seat/diameter_mm  | 50.025  | 50.026
            needles-outside          | second             | ''                 | seat/diameter_mm  | 50      | 49.999
            needles-width            | second-needles     | ''                 | needles/width_mm  | 28      | 28.01
            bush-clearance           | first              | ''                 | seat/diameter_mm  | 46.025  | 46.024
            bush-clearance           | first              | ''                 | seat/diameter_mm  | 46.254  | 46.255
            gear-press-fit           | cluster-second     | ''                 | seat/diameter_mm  | 35.999  | 35.9995
            gear-press-fit           | cluster-second     | ''                 | seat/diameter_mm  | 35.924  | 35.923
            gear-length              | second             | ''                 | seat/length_mm    | 28      | 28.01
            gear-spline-length       | cluster-driven     | ''                 | seat/spline_mm    | 22      | 21.99
            gear-spline-length       | countershaft       | cluster-driven     | seat/spline_mm    | 22      | 21.99
            hub-spline-length        | 1-2-hub            | ''                 | seat/spline_mm    | 30      | 23.99
            half-shaft-spline-length | left-half-shaft    | ''                 | seat/spline_mm    | 32      | 31.99
            bearing-bore             | output             | output-bearing     | seat/diameter_mm  | 45.025  | 45.026
            bearing-bore             | output             | output-bearing     | seat/diameter_mm  | 44.995  | 44.994
            bearing-outside          | box-case           | input-bearing      | seat/diameter_mm  | 85.035  | 85.036
            bearing-outside          | input              | pilot-bearing      | seat/diameter_mm  | 27.991  | 27.990
            bearing-width            | output-bearing     | ''                 | bearing/width_mm  | 25      | 30
            bearing-room             | output-bearing     | ''                 | bearing/width_mm  | 24.85   | 24.84
            bearing-room             | pilot-bearing      | ''                 | bearing/width_mm  | 16.85   | 16.84
            """)
    void seatsMustSuit(String check, String place, String feature, String fact, String holds, String fails) {
        assertBetween(FittingBox.phalarope(), check, place, feature, fact, holds, fails);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            hub-press-fit | seat/diameter_mm | 44.999 | 44.9995
            hub-press-fit | seat/diameter_mm | 44.914 | 44.913
            hub-length    | seat/length_mm   | 24     | 24.01
            """)
    void aPressedHubMustSuit(String check, String fact, String holds, String fails) {
        assertBetween(FittingBoxes.pressedHub(), check, "1-2-hub", "", fact, holds, fails);
    }

    /** The same gear from the shelf, where the shaft has its own. */
    @Test
    void noLooseGearReplacesOneThatIsCutOnItsShaft() {
        FittingBox box = FittingBox.phalarope();
        FittingBox loose = box.withPart("cluster-first", box.is().get("second"));
        assertOutcome(Outcome.FAILS, loose, "cut-in-one");
    }

    /** 36 H7/p6 is 36 for both; measured to the hundredth it would fall off. */
    @Test
    void oneSizeForBothIsTheNominalSizeUnlessItWasMeasured() {
        Fact stated = Fact.of(FactName.SEAT_MM, 36);
        FittingBox pressed = FittingBox.phalarope();
        assertOutcome(Outcome.HOLDS, pressed.with("cluster-second", stated), "gear-press-fit");
        assertOutcome(Outcome.FAILS, pressed.with("cluster-second", stated.asMeasured()), "gear-press-fit");
        Fact bore = Fact.of(FactName.SEAT_MM, 46);
        assertOutcome(Outcome.HOLDS, pressed.with("first", bore), "bush-clearance");
        assertOutcome(Outcome.FAILS, pressed.with("first", bore.asMeasured()), "bush-clearance");
    }

    /** Y-10, published: a gear on its journal has 0.0035 to 0.0045 in new, and up to 0.010 in worn. */
    @ParameterizedTest
    @CsvSource({"0.0035, HOLDS", "0.0045, HOLDS", "0.010, HOLDS", "0.0101, FAILS"})
    void y10GearOnItsJournal(double inches, Outcome outcome) {
        FittingBox box = FittingBox.phalarope().with("first", Fact.of(FactName.SEAT_MM, 46 + inches * 25.4));
        assertOutcome(outcome, box, "bush-clearance");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            gear-spline       | cluster-driven  | DIN 5480 - 30 x 1.25 x 30 x 22 | DIN 5480 - 30 x 1 x 30 x 28
            gear-spline       | cluster-driven  | DIN 5480 N 30 x 1.25 x 22 x 9H | ISO 4156 - 22z x 1.25m x 30P x 5
            hub-spline        | 1-2-hub         | DIN 5480 - 45 x 1.5 x 30 x 28  | DIN 5480 - 42 x 1.5 x 30 x 26
            half-shaft-spline | left-half-shaft | ISO 4156 - 24z x 1.25m x 30P x 5 | ISO 4156 - 26z x 1.25m x 30P x 5
            half-shaft-spline | left-half-shaft | ISO 4156 - 24z x 1.25m x 30P x 6 | ANSI B92.1 - 24T 20/40P 30
            """)
    void splinesMustEnter(String check, String place, String enters, String doesNot) {
        assertBetween(FittingBox.phalarope(), check, place, "", "seat/spline", enters, doesNot);
    }

    @Test
    void aSplineThatDoesNotEnterTellsWhatBarsIt() {
        Judgement failing = FittingBox.phalarope()
                .with("1-2-hub", Fact.of(FactName.SPLINE, "DIN 5480 - 42 x 1.5 x 30 x 26"))
                .judged("hub-spline")
                .get(0);
        assertTrue(failing.remark().contains("Number of teeth: 28 in 26."), failing.remark());
        assertEquals("DIN 5480 - 45 x 1.5 x 30 x 28", failing.figures().get(0).shown());
    }

    /** Neither root nor fit is told, but another standard is, and that is enough. */
    @Test
    void asManyTeethToAnotherStandardDoNotEnter() {
        FittingBox other =
                FittingBox.phalarope().with("left-half-shaft", Fact.of(FactName.SPLINE, "ANSI B92.1 - 24T 20/40P 30"));
        Judgement failing = other.judged("half-shaft-spline").get(0);
        assertEquals(Outcome.FAILS, failing.outcome());
        assertEquals("The two must have one standard.", failing.remark());
    }

    /** Root and fit are left open: 20/40 is to be had with a side fit alone, 12/24 with a major diameter fit as well. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            26T 20/40P 30 | 26T 20/40P 30 deg flat root side fit                 | HOLDS
            24T 20/40P 30 | 26T 20/40P 30 deg flat root side fit                 | FAILS
            26T 12/24P 30 | 26T 12/24P 30 deg flat root side fit                 | UNTOLD
            24T 12/24P 30 | 26T 12/24P 30                                        | FAILS
            26T 12/24P 30 | 26T 12/24P 30                                        | HOLDS
            26T 20/40P 45 | 26T 20/40P 30                                        | FAILS
            """)
    void whatADesignationLeavesOpenDecidesOnlyWhereItMakesADifference(String ofShaft, String ofHub, Outcome outcome) {
        FittingBox box = FittingBox.phalarope()
                .with("left-half-shaft", Fact.of(FactName.SPLINE, "ANSI B92.1 - " + ofShaft))
                .with("differential", "left-half-shaft", Fact.of(FactName.SPLINE, "ANSI B92.1 - " + ofHub));
        Judgement judgement = box.judged("half-shaft-spline").stream()
                .filter(each -> each.meeting().one().equals("left-half-shaft"))
                .findFirst()
                .orElseThrow();
        assertEquals(outcome, judgement.outcome(), judgement::toString);
    }

    @Test
    void aSplineThatCannotBeReadCannotBeTold() {
        FittingBox unread = FittingBox.phalarope().with("1-2-hub", Fact.of(FactName.SPLINE, "the fine one"));
        assertOutcome(Outcome.UNTOLD, unread, "hub-spline");
        Judgement untold = unread.judged("hub-spline").get(0);
        assertEquals(
                List.of(FactName.SPLINE),
                untold.missing().stream().map(missing -> missing.name()).toList());
    }

    /** Where the hub was pressed on before, no length of spline is there to hold it to. */
    @Test
    void aSplineInPlaceOfAPressFitIsHeldToNothing() {
        FittingBox pressed = FittingBoxes.pressedHub();
        FittingBox splined = pressed.with("1-2-hub", Fact.of(FactName.HELD_BY, "spline"))
                .with("output", "1-2-hub", Fact.of(FactName.HELD_BY, "spline"));
        assertEquals(Optional.empty(), splined.outcome("hub-spline-length"));
        assertOutcome(Outcome.HOLDS, splined, "hub-spline");
    }

    @Test
    void whichPartIsMissingIsTold() {
        FittingBox box = FittingBox.phalarope();
        FittingBox bare = new FittingBox(box.empty(), without(box.was()), without(box.is()));
        assertOutcome(Outcome.UNTOLD, bare, "needles-width");
        assertTrue(bare.judged("needles-width").get(0).missing().get(0).words().startsWith("which part stands at"));
    }

    private static Map<String, CataloguePart> without(Map<String, CataloguePart> parts) {
        Map<String, CataloguePart> fewer = new LinkedHashMap<>(parts);
        fewer.remove("second-needles");
        return fewer;
    }
}
