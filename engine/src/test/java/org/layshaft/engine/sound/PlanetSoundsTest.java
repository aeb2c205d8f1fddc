package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Source.Beat;

/** Heron's range: sun 24, four planets of 24, ring 72; in low the ring is held and the output carries the planets. */
class PlanetSoundsTest {
    private static final Fraction MAIN_SHAFT = Fraction.of(42, 51).times(Fraction.of(19, 74));
    private static final Fraction OUTPUT = MAIN_SHAFT.over(Fraction.of(4));
    private static final Sounds LOW = Heard.in("heron", "1 low slow");

    /** Seen from the carrier the held ring turns as often as the carrier does: 72 teeth times that. */
    @Test
    void bothMeshesOfAPlanetSoundAlike() {
        Fraction expected = OUTPUT.times(Fraction.of(72));
        assertEquals(
                expected, Heard.the(LOW, SourceKind.MESH, "range-sun").order().perTurn());
        assertEquals(
                expected,
                Heard.the(LOW, SourceKind.MESH, "range-planet").order().perTurn());
    }

    @Test
    void fourPlanetsPass() {
        assertEquals(
                OUTPUT.times(Fraction.of(4)),
                Heard.the(LOW, SourceKind.PLANETS, "output").order().perTurn());
        // one tooth of the sun is met by each planet, as often as the sun turns against the carrier
        assertEquals(
                MAIN_SHAFT.minus(OUTPUT).times(Fraction.of(4)),
                Heard.the(LOW, SourceKind.TOOTH, "range-sun").order().perTurn());
        // and one of a planet meets the sun and the ring
        assertEquals(
                OUTPUT.times(Fraction.of(72, 24)).times(Fraction.of(2)),
                Heard.the(LOW, SourceKind.TOOTH, "range-planet").order().perTurn());
    }

    @Test
    void theMeshSwellsAsPlanetsPass() {
        List<String> beats = Heard.the(LOW, SourceKind.MESH, "range-sun").beats().stream()
                .map(Beat::what)
                .toList();
        assertEquals(
                List.of(
                        "the turns of the range sun",
                        "the turns of the range planet",
                        "the 4 planets that pass the range sun"),
                beats);
    }

    @Test
    void theNeedlesOfAPlanetRollInItsCarrierAndAreLoaded() {
        Source needles = Heard.the(LOW, SourceKind.BEARING, "range-planet-needles");
        assertEquals(OUTPUT.times(Fraction.of(72, 24)), needles.order().perTurn());
        assertTrue(needles.loaded());
    }

    @Test
    void inHighTheSetGoesRoundAsOne() {
        Sounds high = Heard.in("heron", "1 high slow");
        assertTrue(Heard.of(high, SourceKind.MESH, "range-planet").isEmpty());
        assertTrue(Heard.of(high, SourceKind.BEARING, "range-planet-needles").isEmpty());
    }
}
