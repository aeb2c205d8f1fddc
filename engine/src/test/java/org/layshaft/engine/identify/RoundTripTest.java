package org.layshaft.engine.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.identify.DrawnGears.Drawn;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.kb.layout.GearForm;

/** Random standard gears, measured as at a bench, are found again. */
class RoundTripTest {
    private static final int GEARS = 200;

    @Test
    void straightGears() {
        roundTrip(GearForm.EXTERNAL, true, false);
    }

    @Test
    void helicalGears() {
        roundTrip(GearForm.EXTERNAL, false, false);
    }

    @Test
    void helicalGearsWithAMate() {
        roundTrip(GearForm.EXTERNAL, false, true);
    }

    @Test
    void rings() {
        roundTrip(GearForm.INTERNAL, true, false);
    }

    /** With little measured there are ties; the measurement proposed thins them out and keeps the true one. */
    @Test
    void whatIsProposedToMeasureNextTellsCandidatesApart() {
        DrawnGears draw = new DrawnGears(77);
        int before = 0;
        int after = 0;
        for (int count = 0; count < GEARS; count++) {
            InvoluteGear gear = draw.next(GearForm.EXTERNAL, true).gear();
            List<Measurement> little = List.of(
                    RolledHelix.straight(),
                    TipDiameter.of(gear.tipMm(), gear.moduleMm()),
                    SpanMeasure.of(gear.spanTeeth(), gear.spanMm(gear.spanTeeth())));
            Identification first = identified(gear, little);
            if (first.next().isEmpty()) {
                continue;
            }
            List<Measurement> more = new ArrayList<>(little);
            more.add(made(first.next().get().what(), gear));
            Identification second = identified(gear, more);
            assertTrue(second.isConsistent(), gear.toString());
            before += first.candidates().size();
            after += second.candidates().size();
        }
        assertTrue(after * 2 < before, before + " candidates before, " + after + " after");
    }

    private static void roundTrip(GearForm form, boolean straight, boolean withMate) {
        DrawnGears draw = new DrawnGears(form.ordinal() + (straight ? 10 : 20));
        int alone = 0;
        for (int count = 0; count < GEARS; count++) {
            Drawn drawn = draw.next(form, straight);
            BenchGear measured = draw.measured(drawn.gear());
            BenchGear bench = withMate ? draw.withMate(measured, drawn.gear()) : measured;
            Identification found = bench.identify().value().orElseThrow();
            assertTrue(found.isConsistent(), drawn + ": " + found.contradictions());
            Candidate itself =
                    found.best().stream().filter(drawn::is).findFirst().orElseThrow(() -> new AssertionError(drawn));
            assertTrue(found.candidates().indexOf(itself) < 3, drawn.toString());
            assertEquals(drawn.gear().shift(), itself.gear().shift(), 0.08, drawn.toString());
            alone += found.best().size() == 1 ? 1 : 0;
        }
        assertTrue(alone > GEARS * 3 / 5, alone + " of " + GEARS + " without a tie");
    }

    private static Identification identified(InvoluteGear gear, List<Measurement> measurements) {
        return new BenchGear(gear.form(), OptionalInt.of(gear.teeth()), measurements)
                .identify()
                .value()
                .orElseThrow();
    }

    private static Measurement made(String what, InvoluteGear gear) {
        double pinMm = what.contains("pins") ? Double.parseDouble(what.replaceAll("[^0-9.]", "")) : 0;
        List<Measurement> all = new ArrayList<>(List.of(
                RootDiameter.of(gear.rootMm(), gear.moduleMm()),
                PinMeasure.of(pinMm, gear.overPinsMm(pinMm).orElse(0))));
        for (int teeth = gear.spanTeeth() - 2; teeth <= gear.spanTeeth() + 2; teeth++) {
            all.add(SpanMeasure.of(teeth, gear.spanMm(teeth)));
        }
        return all.stream()
                .filter(measurement -> measurement.what().equals(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError(what));
    }
}
