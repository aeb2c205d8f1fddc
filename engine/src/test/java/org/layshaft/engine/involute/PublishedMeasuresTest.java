package org.layshaft.engine.involute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.involute.SomeGears.helical;
import static org.layshaft.engine.involute.SomeGears.spur;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.GearForm;

/** Spans, thicknesses and the involute function as printed; the makers' reference from memory, recomputed. */
class PublishedMeasuresTest {

    @Test
    void g08_spanOfAShiftedSpurGear() {
        InvoluteGear gear = spur(3, 24, 0.4);
        assertEquals(4, gear.spanTeeth()); // printed 3.78787, take 4
        assertEquals(32.8266, gear.spanMm(4), 5e-5);
        assertEquals(0.4, spur(3, 24, 0).shiftFromSpan(4, 32.8266), 5e-5);
    }

    @Test
    void g09_spanOfAHelicalGear() {
        InvoluteGear gear = helical(3, 25, 24, 0.4);
        assertEquals(21.88023, gear.transversePressureAngleDeg(), 5e-6);
        assertEquals(5, gear.spanTeeth()); // printed 4.63009, take 5
        assertEquals(42.0085, gear.spanMm(5), 5e-5);
    }

    @Test
    void g10_spanOfAHelicalGearInTheTransverseSystem() {
        double cosine = Math.cos(Math.toRadians(22.5));
        double normalAngleDeg = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(20)) * cosine));
        assertEquals(18.58597, normalAngleDeg, 5e-6);
        InvoluteGear gear = InvoluteGear.of(GearForm.EXTERNAL, 24, 3 * cosine, normalAngleDeg, 22.5, 0.4 / cosine);
        assertEquals(4, gear.spanTeeth());
        assertEquals(30.5910, gear.spanMm(4), 5e-5);
    }

    /** The makers' reference, table 10-2, read. */
    @Test
    void g12_thicknessOfARackTooth() {
        InvoluteGear gear = spur(3, 24, 0);
        assertEquals(4.7124, gear.normalThicknessMm(), 5e-5);
        assertEquals(3.0000, gear.moduleMm() * gear.rack().addendum(), 5e-5);
    }

    /** The formula is read in a gear catalogue, https://pdfcoffee.com/mot-spur-gear-pdf-free.html; the number is ours. */
    @Test
    void g13_baseTangentLength() {
        assertEquals(15.3209, spur(2, 20, 0).spanMm(3), 5e-5);
    }

    @Test
    void g33_involuteFunctionAndItsInverse() {
        Map<Double, Double> printed = Map.ofEntries(
                Map.entry(10.0, 0.0017941),
                Map.entry(14.5, 0.0055448),
                Map.entry(15.0, 0.0061498),
                Map.entry(16.0, 0.0074927),
                Map.entry(17.5, 0.0098662),
                Map.entry(20.0, 0.0149044),
                Map.entry(21.0, 0.0173449),
                Map.entry(22.0, 0.0200538),
                Map.entry(22.5, 0.0215145),
                Map.entry(23.0, 0.0230491),
                Map.entry(24.0, 0.0263497),
                Map.entry(25.0, 0.0299753),
                Map.entry(26.0, 0.0339470),
                Map.entry(27.0, 0.0382866),
                Map.entry(28.0, 0.0430172),
                Map.entry(30.0, 0.0537515),
                Map.entry(35.0, 0.0893423),
                Map.entry(45.0, 0.2146018));
        printed.forEach((deg, involute) -> {
            assertEquals(involute, Involute.of(Math.toRadians(deg)), 5.1e-8);
            assertEquals(deg, Math.toDegrees(Involute.angleOf(involute)), 1e-4);
        });
    }

    @Test
    void theInverseHoldsFromNextToNothingToNextToARightAngle() {
        for (double angle = 1e-3; angle < Math.PI / 2 - 1e-3; angle += 1e-3) {
            assertEquals(angle, Involute.angleOf(Involute.of(angle)), 1e-9, "at " + angle);
        }
        assertEquals(0, Involute.angleOf(0));
        assertEquals(Double.NaN, Involute.angleOf(-0.01));
    }
}
