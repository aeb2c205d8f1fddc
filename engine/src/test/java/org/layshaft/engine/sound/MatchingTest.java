package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** Curlew at 2400 turns a minute, 40 in a second, in third: the loaded pair meets 888/47 × 40 = 755.74 times. */
class MatchingTest {
    private static final Fraction RPM = Fraction.of(2400);
    private static final Sounds THIRD = Heard.in("curlew", "3");

    @Test
    void thePlainOrderOfTheLoadedPairComesFirst() {
        Match first = fitting("756", 2).get(0);
        assertEquals(1, first.rank());
        assertEquals(List.of("third", "cluster-third"), first.source().parts());
        assertEquals(Optional.empty(), first.says());
        assertEquals(Fraction.of(35520, 47), first.hz());
        assertEquals(-0.0338, first.offPercent().toDouble(), 1e-4);
    }

    @Test
    void aHarmonicIsNamed() {
        Match second = fitting("1511.5", 1).get(0);
        assertEquals(2, second.harmonic());
        assertEquals(SourceKind.MESH, second.source().kind());
        assertEquals(Optional.of("2nd harmonic"), second.says());
    }

    /** A line at the mesh less one turn of the countershaft, 24/47 of 40: 735.32. */
    @Test
    void aSidebandTellsWhoseTurnsItFollows() {
        Match below = fitting("735.32", 0.01).get(0);
        assertEquals(
                Optional.of("sideband of the plain order, 1 × the turns of the cluster third gear below"),
                below.says());
        assertEquals("cluster-third", below.sideband().orElseThrow().beat().part());
        assertEquals(Fraction.of((888 - 24) * 40, 47), below.hz());
    }

    @Test
    void whatNothingSetsApartSharesItsRank() {
        List<Match> turning = fitting("20.43", 1).stream()
                .filter(match -> match.harmonic() == 1 && match.sideband().isEmpty())
                .toList();
        // the countershaft, and a ring of each of the bearings that it turns in
        assertEquals(
                List.of("countershaft", "countershaft-front-bearing", "countershaft-rear-bearing"),
                turning.stream().map(match -> match.source().parts().get(0)).toList());
        assertTrue(turning.stream().allMatch(match -> match.rank() == 1));
    }

    @Test
    void plainOrdersGoBeforeHarmonicsAndThoseBeforeSidebands() {
        List<Match> many = fitting("120", 10);
        List<Integer> bands = many.stream()
                .map(match -> match.sideband().isPresent() ? 2 : match.harmonic() > 1 ? 1 : 0)
                .toList();
        assertEquals(bands.stream().sorted().toList(), bands);
        assertTrue(bands.containsAll(List.of(0, 1, 2)));
    }

    /** 960 is the input pair to the hair; the tolerance is met at its very edge, and not beyond it. */
    @Test
    void theToleranceIncludesItsEdge() {
        Reach plain = new Reach(1, 0);
        Measured edge = new Measured(Fraction.of(950), Fraction.of(10));
        assertEquals(
                List.of("input-gear"),
                THIRD.fitting(edge, RPM, plain).stream()
                        .map(match -> match.source().parts().get(0))
                        .toList());
        Measured justShort = new Measured(Fraction.of(950), Fraction.of(999, 100));
        assertEquals(List.of(), THIRD.fitting(justShort, RPM, plain));
    }

    @Test
    void nothingIsFoundWhereNothingTurnsSo() {
        assertEquals(List.of(), fitting("50000", 1));
    }

    @Test
    void impossibleValuesAreRefusedAllAtOnce() {
        ImpossibleFactsException refusal =
                assertThrows(ImpossibleFactsException.class, () -> new Measured(Fraction.of(-3), Fraction.of(-1)));
        assertEquals(
                List.of(
                        "The frequency is -3 Hz. It must be more than 0.",
                        "The tolerance is -1 Hz. It must not be less than 0."),
                refusal.problems());
        assertEquals(
                2,
                assertThrows(ImpossibleFactsException.class, () -> new Reach(0, 11))
                        .problems()
                        .size());
    }

    private static List<Match> fitting(String hz, double percent) {
        Measured measured =
                Measured.withinPercent(Fraction.of(new BigDecimal(hz)), Fraction.of(BigDecimal.valueOf(percent)));
        return THIRD.fitting(measured, RPM, Reach.USUAL);
    }
}
