package org.layshaft.engine.exact;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact number: a reduced fraction with a positive denominator, so that equal values are equal. Numbers of any size;
 * those that fit into 62 bits, as nearly all do here, are kept and reckoned as longs. Immutable.
 */
public final class Fraction implements Comparable<Fraction> {
    /** Short numbers have a short negative, and the sum of two products known to be shorter still cannot overflow. */
    private static final int SHORT_BITS = 62;

    public static final Fraction ZERO = new Fraction(0, 1, null);
    public static final Fraction ONE = new Fraction(1, 1, null);
    private static final Fraction MINUS_ONE = new Fraction(-1, 1, null);

    private final long above;
    private final long below;

    /** The reduced fraction where it is too long for the two above; else null. */
    private final Wide wide;

    private Fraction(long above, long below, Wide wide) {
        this.above = above;
        this.below = below;
        this.wide = wide;
    }

    /** Reduces; throws {@link ArithmeticException} for a denominator of zero. */
    public static Fraction of(long numerator, long denominator) {
        if (denominator == 1) {
            return of(numerator);
        }
        if (denominator == 0 || bits(numerator) > SHORT_BITS || bits(denominator) > SHORT_BITS) {
            return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        }
        long common = denominator < 0 ? -commonFactor(numerator, denominator) : commonFactor(numerator, denominator);
        return reduced(numerator / common, denominator / common);
    }

    public static Fraction of(long whole) {
        return bits(whole) > SHORT_BITS ? of(BigInteger.valueOf(whole), BigInteger.ONE) : reduced(whole, 1);
    }

    /** Reduces; throws {@link ArithmeticException} for a denominator of zero. */
    public static Fraction of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("The denominator of %s/0 must not be zero.".formatted(numerator));
        }
        BigInteger factor = numerator.gcd(denominator);
        BigInteger common = denominator.signum() < 0 ? factor.negate() : factor;
        BigInteger above = numerator.divide(common);
        BigInteger below = denominator.divide(common);
        return above.bitLength() <= SHORT_BITS && below.bitLength() <= SHORT_BITS
                ? reduced(above.longValue(), below.longValue())
                : new Fraction(0, 0, new Wide(above, below));
    }

    private static Fraction reduced(long numerator, long denominator) {
        if (denominator == 1 && numerator >= -1 && numerator <= 1) {
            return numerator == 0 ? ZERO : numerator == 1 ? ONE : MINUS_ONE;
        }
        return new Fraction(numerator, denominator, null);
    }

    /** Carries the sign. */
    public BigInteger numerator() {
        return wide == null ? BigInteger.valueOf(above) : wide.above();
    }

    /** At least 1, with no factor in common with the numerator. */
    public BigInteger denominator() {
        return wide == null ? BigInteger.valueOf(below) : wide.below();
    }

    /** The number that a decimal writes, exactly: 3.05 is 61/20. */
    public static Fraction of(BigDecimal decimal) {
        BigDecimal whole = decimal.scale() > 0 ? decimal.movePointRight(decimal.scale()) : decimal;
        return of(whole.toBigIntegerExact(), BigInteger.TEN.pow(Math.max(decimal.scale(), 0)));
    }

    public Fraction plus(Fraction other) {
        if (isZero()) {
            return other;
        }
        if (other.isZero()) {
            return this;
        }
        if (wide == null && other.wide == null) {
            long common = commonFactor(below, other.below);
            long mine = other.below / common;
            long theirs = below / common;
            if (fits(above, mine) && fits(other.above, theirs) && fits(below, mine)) {
                return of(above * mine + other.above * theirs, below * mine);
            }
        }
        return of(
                numerator().multiply(other.denominator()).add(other.numerator().multiply(denominator())),
                denominator().multiply(other.denominator()));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negated());
    }

    public Fraction times(Fraction other) {
        if (this == ONE || other == ZERO) {
            return other;
        }
        if (other == ONE || this == ZERO) {
            return this;
        }
        if (wide == null && other.wide == null) {
            long across = commonFactor(above, other.below);
            long back = commonFactor(other.above, below);
            long left = above / across;
            long right = other.above / back;
            long leftBelow = below / back;
            long rightBelow = other.below / across;
            if (fits(left, right) && fits(leftBelow, rightBelow)) {
                return reduced(left * right, leftBelow * rightBelow);
            }
        }
        return of(numerator().multiply(other.numerator()), denominator().multiply(other.denominator()));
    }

    /** Throws {@link ArithmeticException} for division by zero. */
    public Fraction over(Fraction other) {
        return times(other.inverse());
    }

    /** Throws {@link ArithmeticException} for zero. */
    public Fraction inverse() {
        if (wide != null || above == 0) {
            return of(denominator(), numerator());
        }
        return above < 0 ? reduced(-below, -above) : reduced(below, above);
    }

    public Fraction negated() {
        return wide == null ? reduced(-above, below) : of(wide.above().negate(), wide.below());
    }

    public Fraction absolute() {
        return signum() < 0 ? negated() : this;
    }

    public int signum() {
        return wide == null ? Long.signum(above) : wide.above().signum();
    }

    public boolean isZero() {
        return this == ZERO;
    }

    @Override
    public int compareTo(Fraction other) {
        if (wide == null && other.wide == null && fits(above, other.below) && fits(other.above, below)) {
            return Long.compare(above * other.below, other.above * below);
        }
        return numerator()
                .multiply(other.denominator())
                .compareTo(other.numerator().multiply(denominator()));
    }

    /** The nearest double, for showing only. */
    public double toDouble() {
        return new BigDecimal(numerator())
                .divide(new BigDecimal(denominator()), MathContext.DECIMAL128)
                .doubleValue();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fraction fraction
                && above == fraction.above
                && below == fraction.below
                && (wide == null ? fraction.wide == null : wide.equals(fraction.wide));
    }

    @Override
    public int hashCode() {
        return wide == null ? 31 * Long.hashCode(above) + Long.hashCode(below) : wide.hashCode();
    }

    /** {@code 945/572}, or {@code 2} for a whole number. */
    @Override
    public String toString() {
        return denominator().equals(BigInteger.ONE) ? numerator().toString() : numerator() + "/" + denominator();
    }

    /** Whether the product is so short that the sum of two such is short too. */
    private static boolean fits(long one, long other) {
        return bits(one) + bits(other) < SHORT_BITS;
    }

    private static int bits(long number) {
        return Long.SIZE - Long.numberOfLeadingZeros(Math.abs(number));
    }

    /** The greatest common factor, above zero unless both are zero. */
    private static long commonFactor(long one, long other) {
        long common = Math.abs(other);
        long rest = Math.abs(one);
        if (common == 1 || rest == 1) {
            return 1;
        }
        while (rest != 0) {
            long next = common % rest;
            common = rest;
            rest = next;
        }
        return common;
    }

    private record Wide(BigInteger above, BigInteger below) {}
}
