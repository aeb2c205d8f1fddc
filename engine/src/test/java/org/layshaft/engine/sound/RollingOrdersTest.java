package org.layshaft.engine.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;

class RollingOrdersTest {
    private static final int DRAWN = 200;
    private static final double TOLERANCE = 1e-9;

    /**
     * V-03: orders that the Case Western Reserve bearing data centre prints for its drive-end bearing of 9 balls, 0.3126 on
     * 1.537 in; quoted from memory. It prints 4.7135 for the rolling element, which is twice the spin of a ball. Its 0.39828
     * for the cage contradicts its own 3.5848 for the outer race, a ninth of which is 0.39831. The inches are rounded, and
     * so may the last digit be.
     */
    @Test
    void ordersAsPrintedForABearingOfNineBalls() {
        RollingOrders printed = rolling(9, "0.3126", "1.537", "0");
        assertPrinted("5.4152", printed.innerRace());
        assertPrinted("3.5848", printed.outerRace());
        assertPrinted("4.7135", printed.strikes());
        assertPrinted("0.39831", printed.cage());
        assertPrinted("2.3567", printed.spin());
    }

    /** Two checks that a set of orders can make on itself. */
    @ParameterizedTest
    @CsvSource({"9, 7.3, 41, 0", "10, 11.5, 64, 0", "18, 9.2, 61, 15.5", "17, 8.4, 60, 40"})
    void racesAddUpAndTheCageTakesAllAlong(int count, String element, String pitch, String contact) {
        RollingOrders rolling = rolling(count, element, pitch, contact);
        assertEquals(
                Fraction.of(count),
                rolling.outerRace().perTurn().plus(rolling.innerRace().perTurn()));
        assertEquals(rolling.outerRace(), rolling.cage().times(count));
    }

    /** The other road: the speeds of the surfaces that touch, which do not slide on one another. */
    @Test
    void surfacesThatTouchMoveAtOneSpeed() {
        SplittableRandom random = new SplittableRandom(3);
        for (int drawn = 0; drawn < DRAWN; drawn++) {
            double element = random.nextInt(50, 150) / 10.0;
            double pitch = element * random.nextInt(30, 90) / 10;
            int contact = random.nextInt(0, 45);
            RollingOrders rolling =
                    rolling(8, BigDecimal.valueOf(element), BigDecimal.valueOf(pitch), BigDecimal.valueOf(contact));
            double onInner = pitch / 2 - element / 2 * Math.cos(Math.toRadians(contact));
            double onOuter = pitch / 2 + element / 2 * Math.cos(Math.toRadians(contact));
            // the middle of a ball moves at the mean of the two surfaces, of which the outer stands
            double cage = onInner / 2 / (pitch / 2);
            double spin = cage * onOuter / (element / 2);
            assertEquals(cage, rolling.cage().perTurn().toDouble(), TOLERANCE);
            assertEquals(spin, rolling.spin().perTurn().toDouble(), TOLERANCE);
            assertEquals(8 * (1 - cage), rolling.innerRace().perTurn().toDouble(), TOLERANCE);
        }
    }

    @Test
    void onlyAContactAngleTakesTheExactnessAway() {
        assertTrue(rolling(9, "8", "40", "0.0").innerRace().exact());
        assertEquals(
                Fraction.of(27, 5), rolling(9, "8", "40", "0.0").innerRace().perTurn());
        assertFalse(rolling(9, "8", "40", "15").innerRace().exact());
        assertFalse(rolling(9, "8", "40", "15").strikes().exact());
    }

    private static RollingOrders rolling(int count, String element, String pitch, String contact) {
        return rolling(count, new BigDecimal(element), new BigDecimal(pitch), new BigDecimal(contact));
    }

    private static RollingOrders rolling(int count, BigDecimal element, BigDecimal pitch, BigDecimal contact) {
        return new RollingOrders(count, element, pitch, contact);
    }

    private static void assertPrinted(String printed, Order order) {
        BigDecimal wanted = new BigDecimal(printed);
        assertEquals(
                wanted.doubleValue(), order.perTurn().toDouble(), wanted.ulp().doubleValue());
    }
}
