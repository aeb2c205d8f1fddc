package org.layshaft.engine.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.kb.layout.GearForm;

/** Measurements that are missing, impossible, or stand against each other. */
class BadBenchTest {
    private static final InvoluteGear GEAR = InvoluteGear.of(GearForm.EXTERNAL, 30, 2.5, 20, 0, 0.1);

    @Test
    void withoutTheHelixOrAnySizeItCannotBeTold() {
        assertEquals(
                Optional.of(
                        "cannot be told, the helix angle (0 where the teeth are straight) is missing, a diameter, a span, a measure over pins or a centre distance is missing"),
                bench(30).identify().whyNot());
        assertEquals(
                Optional.of("cannot be told, the helix angle (0 where the teeth are straight) is missing"),
                bench(30, TipDiameter.of(80.5, 2.5)).identify().whyNot());
    }

    @Test
    void teethThatCannotBeCountedAreFound() {
        int span = GEAR.spanTeeth();
        Identification found = new BenchGear(
                        GearForm.EXTERNAL,
                        OptionalInt.empty(),
                        List.of(
                                RolledHelix.straight(),
                                TipDiameter.of(GEAR.tipMm(), 2.5),
                                SpanMeasure.of(span, GEAR.spanMm(span)),
                                SpanMeasure.of(span + 1, GEAR.spanMm(span + 1))))
                .identify()
                .value()
                .orElseThrow();
        assertTrue(found.best().stream()
                .anyMatch(candidate -> candidate.gear().teeth() == 30
                        && candidate.gear().moduleMm() == 2.5
                        && candidate.gear().pressureAngleDeg() == 20));
    }

    @Test
    void aMeasurementThatStandsAgainstTheOthersIsNamed() {
        int span = GEAR.spanTeeth();
        Identification found = bench(
                        30,
                        RolledHelix.straight(),
                        TipDiameter.of(GEAR.tipMm() + 9, 2.5),
                        SpanMeasure.of(span, GEAR.spanMm(span)),
                        SpanMeasure.of(span + 1, GEAR.spanMm(span + 1)))
                .identify()
                .value()
                .orElseThrow();
        assertFalse(found.isConsistent());
        assertTrue(
                found.contradictions().stream()
                        .anyMatch(sentence -> sentence.startsWith("Without the tip diameter the rest agrees with")
                                && sentence.contains("it was measured as 89.5 mm, where it would be 8")
                                && sentence.endsWith("measure it again.")),
                found.contradictions().toString());
        assertTrue(found.candidates().stream().noneMatch(Candidate::isConsistent));
    }

    @Test
    void noStandardGearIsSaidSo() {
        assertEquals(
                List.of(
                        "No standard gear comes near these measurements.",
                        "Leaving one of them out does not help: count the teeth again, and measure again."),
                bench(30, RolledHelix.straight(), TipDiameter.of(3000, 2.5))
                        .identify()
                        .value()
                        .orElseThrow()
                        .contradictions());
    }

    @Test
    void everythingImpossibleIsToldAtOnce() {
        assertEquals(
                List.of(
                        "The number of teeth is 2. It must be at least 5.",
                        "Measured, the helix angle at the tips is 70 degrees. It must be from 0 to 50.",
                        "Measured, the tip diameter is -3 mm. It must be more than 0."),
                problems(2, RolledHelix.of(70), new TipDiameter(-3, 0.1)));
        assertEquals(
                List.of(
                        "The tip diameter is 70 mm and the root diameter 80 mm. Of external teeth the tip diameter is the larger: check which is which.",
                        "A span over 20 teeth is stated. On this gear it must be from 1 to 15.",
                        "The span over 20 teeth is 99 mm, the tip diameter 70 mm. No span is longer than that: check both.",
                        "Measured twice: the span over 20 teeth. State it once, with an allowance that covers both."),
                problems(
                                30,
                                TipDiameter.of(70, 2.5),
                                RootDiameter.of(80, 2.5),
                                SpanMeasure.of(20, 99),
                                SpanMeasure.of(20, 99))
                        .stream()
                        .distinct()
                        .toList());
    }

    @Test
    void whatDoesNotGoWithARingIsTold() {
        assertEquals(
                List.of(
                        "A span over 4 teeth is stated for helical internal teeth. There it cannot be measured: measure between balls.",
                        "The ring has 40 teeth, its mate 50. The ring must have more."),
                assertThrows(
                                ImpossibleFactsException.class,
                                () -> new BenchGear(
                                        GearForm.INTERNAL,
                                        OptionalInt.of(40),
                                        List.of(RolledHelix.of(20), SpanMeasure.of(4, 20), CentreDistance.of(50, 30))))
                        .problems());
    }

    private static BenchGear bench(int teeth, Measurement... measurements) {
        return new BenchGear(GearForm.EXTERNAL, OptionalInt.of(teeth), List.of(measurements));
    }

    private static List<String> problems(int teeth, Measurement... measurements) {
        return assertThrows(ImpossibleFactsException.class, () -> bench(teeth, measurements))
                .problems();
    }
}
