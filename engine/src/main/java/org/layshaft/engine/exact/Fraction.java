package org.layshaft.engine.exact;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact number: a reduced fraction with a positive denominator, so that equal values are equal records. Numbers of
 * any size; those that fit into 31 bits, as nearly all do here, are reckoned in long arithmetic. Immutable.
 *
 * @param numerator carries the sign
 * @param denominator at least 1, with no factor in common with the numerator
 */
public record Fraction(BigInteger numerator, BigInteger denominator) implements Comparable<Fraction> {
    public static final Fraction ZERO = of(0);
    public static final Fraction ONE = of(1);

    /** Products of two such numbers, and sums of two such products, fit into a long. */
    private static final int SHORT_BITS = 31;

    /** Reduces; throws {@link ArithmeticException} for a denominator of zero. */
    public Fraction {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("The denominator of %s/0 must not be zero.".formatted(numerator));
        }
        if (!denominator.equals(BigInteger.ONE)) {
            BigInteger common = commonFactor(numerator, denominator);
            if (!common.equals(BigInteger.ONE)) {
                numerator = numerator.divide(common);
                denominator = denominator.divide(common);
            }
        }
    }

    public static Fraction of(long numerator, long denominator) {
        return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    public static Fraction of(long whole) {
        return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** The number that a decimal writes, exactly: 3.05 is 61/20. */
    public static Fraction of(BigDecimal decimal) {
        BigDecimal whole = decimal.scale() > 0 ? decimal.movePointRight(decimal.scale()) : decimal;
        return new Fraction(whole.toBigIntegerExact(), BigInteger.TEN.pow(Math.max(decimal.scale(), 0)));
    }

    public Fraction plus(Fraction other) {
        if (isZero()) {
            return other;
        }
        if (other.isZero()) {
            return this;
        }
        if (isShort() && other.isShort()) {
            return of(
                    numerator.longValue() * other.denominator.longValue()
                            + other.numerator.longValue() * denominator.longValue(),
                    denominator.longValue() * other.denominator.longValue());
        }
        return new Fraction(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negated());
    }

    public Fraction times(Fraction other) {
        if (isOne()) {
            return other;
        }
        if (other.isOne()) {
            return this;
        }
        if (isShort() && other.isShort()) {
            return of(
                    numerator.longValue() * other.numerator.longValue(),
                    denominator.longValue() * other.denominator.longValue());
        }
        return new Fraction(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /** Throws {@link ArithmeticException} for division by zero. */
    public Fraction over(Fraction other) {
        return times(other.inverse());
    }

    /** Throws {@link ArithmeticException} for zero. */
    public Fraction inverse() {
        return new Fraction(denominator, numerator);
    }

    public Fraction negated() {
        return new Fraction(numerator.negate(), denominator);
    }

    public Fraction absolute() {
        return signum() < 0 ? negated() : this;
    }

    public int signum() {
        return numerator.signum();
    }

    public boolean isZero() {
        return signum() == 0;
    }

    @Override
    public int compareTo(Fraction other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** The nearest double, for showing only. */
    public double toDouble() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
                .doubleValue();
    }

    /** {@code 945/572}, or {@code 2} for a whole number. */
    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }

    private boolean isOne() {
        return numerator.equals(BigInteger.ONE) && denominator.equals(BigInteger.ONE);
    }

    private boolean isShort() {
        return numerator.bitLength() <= SHORT_BITS && denominator.bitLength() <= SHORT_BITS;
    }

    /** The greatest common factor, with the sign of the denominator. */
    private static BigInteger commonFactor(BigInteger numerator, BigInteger denominator) {
        if (numerator.bitLength() < Long.SIZE - 1 && denominator.bitLength() < Long.SIZE - 1) {
            return BigInteger.valueOf(commonFactor(numerator.longValue(), denominator.longValue()));
        }
        BigInteger common = numerator.gcd(denominator);
        return denominator.signum() < 0 ? common.negate() : common;
    }

    private static long commonFactor(long numerator, long denominator) {
        long common = Math.abs(denominator);
        long rest = Math.abs(numerator);
        while (rest != 0) {
            long next = common % rest;
            common = rest;
            rest = next;
        }
        return denominator < 0 ? -common : common;
    }
}
