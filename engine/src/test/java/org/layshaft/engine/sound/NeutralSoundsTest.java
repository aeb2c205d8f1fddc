package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;

class NeutralSoundsTest {
    @Test
    void standingEveryMeshTurnsAndNothingIsLoaded() {
        Sounds neutral = Heard.inNeutral("curlew", Fraction.ZERO);
        assertEquals(
                Fraction.of(37 * 24, 47),
                Heard.the(neutral, SourceKind.MESH, "third").order().perTurn());
        assertTrue(neutral.sources().stream().noneMatch(Source::loaded));
        assertTrue(Heard.of(neutral, SourceKind.SHAFT, "output").isEmpty());
    }

    /** The output stands: what turns in the needles of third is third gear, and the pilot turns with the input. */
    @Test
    void standingTheNeedlesTurnWithTheirGears() {
        Sounds neutral = Heard.inNeutral("curlew", Fraction.ZERO);
        assertEquals(
                Fraction.of(24 * 37, 47 * 34),
                Heard.the(neutral, SourceKind.BEARING, "third-needles").order().perTurn());
        assertEquals(
                Fraction.ONE,
                Heard.the(neutral, SourceKind.BEARING, "pilot-bearing").order().perTurn());
    }

    @Test
    void rollingBothSidesOfTheBoxAreHeard() {
        Sounds rolling = Heard.inNeutral("curlew", Fraction.of(3, 2));
        assertEquals(
                Fraction.of(3, 2),
                Heard.the(rolling, SourceKind.SHAFT, "output").order().perTurn());
        assertEquals(
                Fraction.of(1, 2),
                Heard.the(rolling, SourceKind.BEARING, "pilot-bearing").order().perTurn());
    }

    @Test
    void whatAlwaysDrivesHasNoNeutral() {
        Layout axle = Boxes.the("knot");
        assertEquals(Optional.empty(), Sounds.inNeutral(axle, Heard.names(axle), Fraction.ZERO));
    }
}
