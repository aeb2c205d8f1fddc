package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;

/**
 * V-06, formulas read at power-mi.com: meshing frequency = teeth × turns; hunting tooth = meshing × N / (product of the
 * teeth); assembly phase = meshing / N, where N is the product of the prime factors that both numbers have in common.
 */
class PairingTest {
    private static final Order ONE = Order.exactly(Fraction.ONE);

    @ParameterizedTest
    @CsvSource({"34, 37, 1", "24, 36, 12", "18, 27, 9", "24, 72, 24", "16, 40, 8", "17, 51, 17"})
    void factorsInCommon(int first, int second, int phases) {
        assertEquals(phases, new Pairing(first, second, ONE).phases());
        assertEquals(
                Fraction.of(1, phases),
                new Pairing(first, second, ONE).assemblyPhase().perTurn());
    }

    /** The other road: counting the teeth on until the two that met at first meet again. */
    @ParameterizedTest
    @CsvSource({"34, 37", "24, 36", "18, 27", "24, 72", "16, 40", "11, 43"})
    void theSameTeethMeetAgain(int first, int second) {
        int meetings = 0;
        do {
            meetings++;
        } while (meetings % first != 0 || meetings % second != 0);
        assertEquals(
                Fraction.of(1, meetings),
                new Pairing(first, second, ONE).huntingTooth().perTurn());
    }

    /** The other road: how many teeth of the second ever meet a given one of the first, and so in how many ways it can be set. */
    @ParameterizedTest
    @CsvSource({"34, 37", "24, 36", "18, 27", "24, 72"})
    void teethThatNeverMeet(int first, int second) {
        long met = IntStream.range(0, first * second)
                .filter(meeting -> meeting % first == 0)
                .map(meeting -> meeting % second)
                .distinct()
                .count();
        assertEquals(second / met, new Pairing(first, second, ONE).phases());
    }
}
