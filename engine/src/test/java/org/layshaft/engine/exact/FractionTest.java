package org.layshaft.engine.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FractionTest {
    /** Around every border between short and long arithmetic: 31 bits, 32, 62, 63, and far beyond. */
    private static final List<BigInteger> NUMBERS = IntStream.of(0, 1, 5, 30, 31, 32, 61, 62, 63, 64, 130)
            .mapToObj(BigInteger.ONE::shiftLeft)
            .flatMap(power -> Stream.of(power.subtract(BigInteger.TWO), power.subtract(BigInteger.ONE), power))
            .flatMap(number -> Stream.of(number, number.negate()))
            .distinct()
            .toList();

    private static Stream<Pair> pairs() {
        SplittableRandom random = new SplittableRandom(20261125);
        return IntStream.range(0, 4000).mapToObj(index -> new Pair(any(random), any(random)));
    }

    private static Fraction any(SplittableRandom random) {
        BigInteger denominator = number(random);
        return Fraction.of(number(random), denominator.signum() == 0 ? BigInteger.ONE : denominator);
    }

    private static BigInteger number(SplittableRandom random) {
        return NUMBERS.get(random.nextInt(NUMBERS.size()));
    }

    @Test
    void sumsDifferencesProductsAndQuotientsAgreeWithWholeNumberArithmetic() {
        pairs().forEach(pair -> {
            Fraction one = pair.one();
            Fraction other = pair.other();
            BigInteger below = one.denominator().multiply(other.denominator());
            BigInteger left = one.numerator().multiply(other.denominator());
            BigInteger right = other.numerator().multiply(one.denominator());
            assertIs(left.add(right), below, one.plus(other));
            assertIs(left.subtract(right), below, one.minus(other));
            assertIs(one.numerator().multiply(other.numerator()), below, one.times(other));
            if (!other.isZero()) {
                assertIs(left, right, one.over(other));
            }
            assertEquals(left.compareTo(right), one.compareTo(other));
        });
    }

    @Test
    void isAFieldAsFarAsTried() {
        pairs().forEach(pair -> {
            Fraction one = pair.one();
            Fraction other = pair.other();
            Fraction third = Fraction.of(-7, 12);
            assertEquals(one.plus(other), other.plus(one));
            assertEquals(one.times(other), other.times(one));
            assertEquals(one.plus(other).plus(third), one.plus(other.plus(third)));
            assertEquals(one.times(other).times(third), one.times(other.times(third)));
            assertEquals(third.times(one.plus(other)), third.times(one).plus(third.times(other)));
            assertEquals(Fraction.ZERO, one.minus(one));
            if (!one.isZero()) {
                assertEquals(Fraction.ONE, one.times(one.inverse()));
            }
        });
    }

    @ParameterizedTest
    @CsvSource({"945, 572, 945/572", "-6, 4, -3/2", "6, -4, -3/2", "-6, -4, 3/2", "0, -9, 0", "12, 4, 3", "7, 1, 7"})
    void isReducedWithThePositiveDenominatorBelow(long numerator, long denominator, String shown) {
        assertEquals(shown, Fraction.of(numerator, denominator).toString());
    }

    @Test
    void equalValuesAreEqual() {
        assertEquals(Fraction.of(2, 3), Fraction.of(-8, -12));
        assertEquals(Fraction.of(2, 3).hashCode(), Fraction.of(-8, -12).hashCode());
        assertEquals(Fraction.ZERO, Fraction.of(0, 5));
    }

    @Test
    void zeroBelowIsRefusedWithTheNumberAbove() {
        String message = "The denominator of 7/0 must not be zero.";
        assertEquals(
                message,
                assertThrows(ArithmeticException.class, () -> Fraction.of(7, 0)).getMessage());
        assertEquals(
                "The denominator of 1/0 must not be zero.",
                assertThrows(ArithmeticException.class, Fraction.ZERO::inverse).getMessage());
        assertThrows(ArithmeticException.class, () -> Fraction.ONE.over(Fraction.ZERO));
    }

    @Test
    void showsTheNearestDouble() {
        for (long above = -60; above <= 60; above++) {
            for (long below = 1; below <= 60; below++) {
                // IEEE division of two exact doubles gives the nearest double
                assertEquals(
                        (double) above / below + 0.0, Fraction.of(above, below).toDouble());
            }
        }
    }

    @Test
    void decimalsToManyDigitsRoundToTheSameDouble() {
        pairs().map(Pair::one).forEach(one -> {
            BigDecimal decimal = new BigDecimal(one.numerator())
                    .divide(new BigDecimal(one.denominator()), new MathContext(60, RoundingMode.HALF_EVEN));
            assertEquals(decimal.doubleValue(), one.toDouble());
        });
    }

    private static void assertIs(BigInteger numerator, BigInteger denominator, Fraction got) {
        assertEquals(numerator.multiply(got.denominator()), denominator.multiply(got.numerator()));
        assertTrue(got.denominator().signum() > 0);
        assertEquals(BigInteger.ONE, got.numerator().gcd(got.denominator()));
    }

    record Pair(Fraction one, Fraction other) {}
}
