package org.layshaft.engine.spline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.spline.SplineComparison.Outcome;
import org.layshaft.engine.spline.SplineEntry.Verdict;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** P-06, from memory: what must agree for a shaft to enter a hub and carry torque. */
class SplineEntryTest {

    @Test
    void aPairOfOneDesignationEnters() {
        entry("W 30x2x14x8f", "N 30x2x14x9H").verdictIs(Verdict.ENTERS).barredBy();
        entry("EXT 24z x 2.5m x 30P x 5f", "INT 24z x 2.5m x 30P x 5H")
                .verdictIs(Verdict.ENTERS)
                .barredBy();
        entry("EXT 24T 12/24P 30 deg flat root side fit", "INT 24T 12/24P 30 deg flat root side fit")
                .verdictIs(Verdict.ENTERS)
                .barredBy();
        entry(
                        "EXT 24T 12/24P 30 deg flat root major diameter fit",
                        "INT 24T 12/24P 30 deg flat root major diameter fit")
                .verdictIs(Verdict.ENTERS)
                .barredBy();
    }

    @Test
    void sameTeethAndModuleInAnotherStandardDoNotFit() {
        entry("W 30x1.25x22x8f", "INT 22z x 1.25m x 30P x 5H")
                .verdictIs(Verdict.DOES_NOT)
                .barredBy("standard", "profile shift", "outer diameters", "inner diameters");
    }

    @Test
    void eachThingThatDiffersIsToldWithBothNumbers() {
        SplineEntry entry = SplineEntry.of(
                SplineDesignation.parse("EXT 24T 12/24P 30 deg flat root side fit"),
                SplineDesignation.parse("INT 23T 10/20P 45 deg"));
        assertEquals(
                List.of(
                        new SplineComparison(
                                "pressure angle", "30 deg", "45 deg", Outcome.BARS, "They differ by 15 deg."),
                        new SplineComparison(
                                "module",
                                "2.11667 mm (pitch 12/24)",
                                "2.54 mm (pitch 10/20)",
                                Outcome.BARS,
                                "They differ by 0.423333 mm."),
                        new SplineComparison(
                                "number of teeth", "24", "23", Outcome.BARS, "The two must have one number of teeth."),
                        new SplineComparison(
                                "tips",
                                "52.9167 mm",
                                "56.896 mm",
                                Outcome.BARS,
                                "The teeth do not reach each other: no torque is carried.")),
                entry.with(Outcome.BARS));
    }

    @Test
    void anotherReferenceDiameterIsAnotherShift() {
        entry("W 31x2x14x8f", "N 30x2x14x9H")
                .verdictIs(Verdict.DOES_NOT)
                .barredBy("profile shift", "outer diameters", "inner diameters");
    }

    @Test
    void anotherFitCentresOtherwise() {
        entry("EXT 24T 12/24P 30 deg flat root side fit", "INT 24T 12/24P 30 deg flat root major diameter fit")
                .verdictIs(Verdict.DOES_NOT)
                .barredBy("fit");
    }

    @Test
    void anotherRootIsNoHindranceWhereTheTipsHaveRoom() {
        SplineEntry entry = SplineEntry.of(
                SplineDesignation.parse("EXT 24z x 2.5m x 30R x 5f"),
                SplineDesignation.parse("INT 24z x 2.5m x 30P x 5H"));
        assertEquals(Verdict.ENTERS, entry.verdict());
        assertEquals(
                List.of(new SplineComparison(
                        "root",
                        "fillet root",
                        "flat root",
                        Outcome.HARMLESS,
                        "The diameters tell whether the tips have room in them.")),
                entry.with(Outcome.HARMLESS));
    }

    @Test
    void aToleranceThatIsNotStatedLeavesThePlayUntold() {
        entry("W 30x2x14", "N 30x2x14x9H").verdictIs(Verdict.CANNOT_BE_TOLD).barredBy();
        entry("W 30x2x14x8f", "N 30x2x14").verdictIs(Verdict.CANNOT_BE_TOLD).barredBy();
        entry("W 30x2x14x8k", "N 30x2x14x9H").verdictIs(Verdict.DOES_NOT).barredBy("tolerance");
        entry("W 30x2x14x8k", "N 30x2x14x9F").verdictIs(Verdict.CANNOT_BE_TOLD).barredBy();
    }

    @Test
    void lengthIsAnotherMatter() {
        assertEquals(
                Optional.of(18.0),
                SplineEntry.engagedLengthMm(Optional.of(25.0), Optional.of(18.0))
                        .value());
        assertEquals(
                Optional.of("cannot be told, the usable length of the hub's spline is missing"),
                SplineEntry.engagedLengthMm(Optional.of(25.0), Optional.empty()).whyNot());
    }

    @Test
    void twoShaftsAreNoPair() {
        Spline shaft = SplineDesignation.parse("W 30x2x14");
        assertEquals(
                List.of("DIN 5480 - W 30 x 2 x 14 is a shaft's. A hub's is needed."),
                assertThrows(ImpossibleFactsException.class, () -> SplineEntry.of(shaft, shaft))
                        .problems());
    }

    private static Judged entry(String shaft, String hub) {
        return new Judged(SplineEntry.of(SplineDesignation.parse(shaft), SplineDesignation.parse(hub)));
    }

    private record Judged(SplineEntry entry) {
        Judged verdictIs(Verdict verdict) {
            assertEquals(verdict, entry.verdict(), entry.toString());
            return this;
        }

        void barredBy(String... what) {
            assertEquals(
                    List.of(what),
                    entry.with(Outcome.BARS).stream()
                            .map(SplineComparison::what)
                            .toList());
        }
    }
}
