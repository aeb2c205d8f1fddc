package org.layshaft.engine.exact;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact number: a reduced fraction with a positive denominator, so that equal values are equal records.
 *
 * @param numerator carries the sign
 * @param denominator at least 1, with no factor in common with the numerator
 */
public record Fraction(BigInteger numerator, BigInteger denominator) implements Comparable<Fraction> {
    public static final Fraction ZERO = of(0);
    public static final Fraction ONE = of(1);

    public Fraction {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("The denominator of %s/0 must not be zero.".formatted(numerator));
        }
        BigInteger common = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            common = common.negate();
        }
        if (!common.equals(BigInteger.ONE)) {
            numerator = numerator.divide(common);
            denominator = denominator.divide(common);
        }
    }

    public static Fraction of(long numerator, long denominator) {
        return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    public static Fraction of(long whole) {
        return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    public Fraction plus(Fraction other) {
        return new Fraction(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negated());
    }

    public Fraction times(Fraction other) {
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
                .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
                .doubleValue();
    }

    /** {@code 945/572}, or {@code 2} for a whole number. */
    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }
}
