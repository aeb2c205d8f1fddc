package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Named;
import org.layshaft.kb.layout.Rolling;

/** Bearings in a box: their sizes are stated, and both their rings may turn. */
class BearingSoundsTest {
    private static final RollingOrders TEN =
            new RollingOrders(10, new BigDecimal("11.5"), new BigDecimal("64"), BigDecimal.ZERO);

    /** 10 balls, 11.5 on 64 mm, on the input: k = 23/128. */
    @Test
    void theInputBearingOfCurlew() {
        Sounds sounds = Heard.in("curlew", "2");
        assertEquals(Fraction.of(525, 128), order(sounds, SourceKind.OUTER_RACE, "input-bearing"));
        assertEquals(Fraction.of(755, 128), order(sounds, SourceKind.INNER_RACE, "input-bearing"));
        assertEquals(Fraction.of(105, 256), order(sounds, SourceKind.CAGE, "input-bearing"));
        Source race = Heard.the(sounds, SourceKind.INNER_RACE, "input-bearing");
        assertEquals("10/2 × (1 + 11.5/64) × 1 turn of the input shaft against the case", race.how());
        assertEquals("the turns of the input shaft", race.beats().get(0).what());
    }

    @Test
    void aContactAngleIsSaidAndOnlyNearlyExact() {
        Source race = Heard.the(Heard.in("curlew", "2"), SourceKind.OUTER_RACE, "countershaft-rear-bearing");
        assertEquals("18/2 × (1 − 9.2/61 × cos 15.5°) × 24/47 turns of the countershaft against the case", race.how());
        assertTrue(!race.order().exact());
        double expected = 18 / 2.0 * (1 - 9.2 / 61 * Math.cos(Math.toRadians(15.5))) * 24 / 47;
        assertEquals(expected, race.order().perTurn().toDouble(), 1e-12);
    }

    /** Only the difference of the two rings makes balls pass; the cage goes round in the case between the two. */
    @Test
    void bothRingsTurn() {
        BearingPlace both = place(Fraction.of(5, 2), Fraction.of(3, 2));
        BearingPlace inner = place(Fraction.ONE, Fraction.ZERO);
        assertEquals(inner.difference(), both.difference());
        assertEquals(
                Fraction.of(3, 2).plus(inner.cage(TEN).perTurn()),
                both.cage(TEN).perTurn());
        BearingPlace opposed = place(Fraction.ONE, Fraction.ONE.negated());
        // the middle of what rolls moves with the inner ring less than it does with the outer: it goes the outer's way
        assertEquals(Fraction.of(23, 128), opposed.cage(TEN).perTurn());
    }

    @Test
    void whatIsMissingIsSaidAndNotGuessed() {
        Bearing bearing = new Bearing(new Named("front", "front bearing", List.of()), "input", Bearing.CASE);
        Rolling counted =
                new Rolling(OptionalInt.of(9), Optional.empty(), Optional.of(new BigDecimal("40")), Optional.empty());
        assertEquals(
                Optional.of("cannot be told, the diameter of a ball or roller of the front bearing is missing,"
                        + " the contact angle of the front bearing is missing"),
                RollingOrders.of(bearing, counted).whyNot());
        Sounds sounds = Heard.in("curlew", "2");
        assertTrue(Heard.of(sounds, SourceKind.OUTER_RACE, "pilot-bearing").isEmpty());
        assertTrue(sounds.untold().stream()
                .anyMatch(why -> why.startsWith("What the balls or rollers of the pilot bearing")));
        assertTrue(sounds.untold().stream()
                .anyMatch(why -> why.contains("first needle bearing") && why.contains("missing")));
    }

    @Test
    void aBearingWhoseRingsTurnAlikeIsQuiet() {
        assertTrue(Heard.in("curlew", "5").sources().stream()
                .noneMatch(source -> source.parts().contains("pilot-bearing")));
    }

    private static BearingPlace place(Fraction inner, Fraction outer) {
        Bearing bearing = new Bearing(new Named("pilot", "pilot bearing", List.of()), "output", "input");
        return new BearingPlace(bearing, inner, outer, false);
    }

    private static Fraction order(Sounds sounds, SourceKind kind, String bearing) {
        return Heard.the(sounds, kind, bearing).order().perTurn();
    }
}
