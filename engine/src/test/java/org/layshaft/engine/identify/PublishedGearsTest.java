package org.layshaft.engine.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.identify.NormalPitch.Series;
import org.layshaft.kb.layout.GearForm;

/** Gears of a makers' technical reference (Kohara, from memory, recomputed), taken for unknown ones; ISO 54. */
class PublishedGearsTest {

    @Test
    void g08_spurGearByItsSpans() {
        // printed: span over 4 teeth 32.8266; a base pitch more over 5
        double basePitchMm = Math.PI * 3 * Math.cos(Math.toRadians(20));
        Candidate best = only(
                24,
                RolledHelix.straight(),
                TipDiameter.of(72 + 2 * 3 * 1.4, 3),
                SpanMeasure.of(4, 32.83),
                SpanMeasure.of(5, 32.8266 + basePitchMm));
        assertEquals("24 teeth, module 3 mm, pressure angle 20 degrees, straight, shift 0.4", best.words());
        assertEquals(32.8266, best.residuals().get(2).computed(), 0.01);
    }

    @Test
    void g09_helicalGearByItsSpanAndTipDiameter() {
        Identification found = identified(
                24,
                RolledHelix.of(27),
                TipDiameter.of(24 * 3 / Math.cos(Math.toRadians(25)) + 2 * 3 * 1.4, 3),
                SpanMeasure.of(5, 42.0085),
                SpanMeasure.of(6, 42.0085 + Math.PI * 3 * Math.cos(Math.toRadians(20))));
        Candidate best = found.candidates().get(0);
        assertEquals(3, best.gear().moduleMm());
        assertEquals(20, best.gear().pressureAngleDeg());
        assertEquals(25, best.gear().helixDeg(), 0.5);
        assertEquals(0.4, best.gear().shift(), 0.05);
    }

    /** The tip is shortened by 0.12 mm, and the pair's distance 56.4999 mm. */
    @Test
    void g02_pinionByItsTipDiameterAndItsMate() {
        Identification found =
                identified(12, RolledHelix.straight(), TipDiameter.of(44.84, 3), CentreDistance.of(24, 56.4999));
        assertTrue(found.candidates().stream()
                .anyMatch(candidate -> candidate.gear().moduleMm() == 3
                        && candidate.gear().pressureAngleDeg() == 20
                        && Math.abs(candidate.gear().shift() - 0.6) < 0.15));
        assertTrue(found.best().size() > 1, "two measurements do not settle it");
        assertTrue(found.next().isPresent());
    }

    /** Recomputed from a printed formula. */
    @Test
    void g13_spurGear() {
        Candidate best = only(
                20,
                RolledHelix.straight(),
                TipDiameter.of(44, 2),
                SpanMeasure.of(3, 15.32),
                SpanMeasure.of(2, 15.3209 - Math.PI * 2 * Math.cos(Math.toRadians(20))));
        assertEquals("20 teeth, module 2 mm, pressure angle 20 degrees, straight, shift 0", best.words());
    }

    /** ISO 54:1996, from memory; secondary lists agree. */
    @Test
    void g31_standardModules() {
        assertEquals(
                List.of(
                        1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 32.0, 40.0,
                        50.0),
                modules(Series.MODULE_FIRST));
        assertEquals(
                List.of(
                        1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7.0, 9.0, 11.0, 14.0, 18.0, 22.0, 28.0,
                        36.0, 45.0),
                modules(Series.MODULE_SECOND));
        assertEquals(
                List.of(new NormalPitch(Series.MODULE_SECOND, 6.5)),
                NormalPitch.standard().stream()
                        .filter(NormalPitch::isToBeAvoided)
                        .toList());
    }

    private static List<Double> modules(Series series) {
        return NormalPitch.standard().stream()
                .filter(pitch -> pitch.series() == series)
                .map(NormalPitch::nominal)
                .toList();
    }

    private static Candidate only(int teeth, Measurement... measurements) {
        List<Candidate> best = identified(teeth, measurements).best();
        assertEquals(1, best.size(), best.toString());
        return best.get(0);
    }

    private static Identification identified(int teeth, Measurement... measurements) {
        return new BenchGear(GearForm.EXTERNAL, OptionalInt.of(teeth), List.of(measurements))
                .identify()
                .value()
                .orElseThrow();
    }
}
