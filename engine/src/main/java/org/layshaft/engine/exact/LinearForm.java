package org.layshaft.engine.exact;

import java.util.Arrays;

/**
 * A sum of numbered unknowns, each times a coefficient: {@code 3·x₁ − 1/2·x₄}. Immutable; only the terms that are not
 * zero are kept, so that a form with few terms is cheap however many unknowns there are.
 */
public final class LinearForm {
    public static final LinearForm ZERO = new LinearForm(new int[0], new Fraction[0]);

    private final int[] unknowns;
    private final Fraction[] coefficients;

    private LinearForm(int[] unknowns, Fraction[] coefficients) {
        this.unknowns = unknowns;
        this.coefficients = coefficients;
    }

    /** One unknown times a coefficient; unknowns are numbered from 0. */
    public static LinearForm of(int unknown, Fraction coefficient) {
        return coefficient.isZero() ? ZERO : new LinearForm(new int[] {unknown}, new Fraction[] {coefficient});
    }

    public LinearForm plus(LinearForm other) {
        return plus(other, Fraction.ONE);
    }

    /** This form and the other times a factor. */
    public LinearForm plus(LinearForm other, Fraction factor) {
        if (factor.isZero() || other.isZero()) {
            return this;
        }
        if (isZero() && factor.equals(Fraction.ONE)) {
            return other;
        }
        int[] where = new int[unknowns.length + other.unknowns.length];
        Fraction[] what = new Fraction[where.length];
        int terms = 0;
        int mine = 0;
        int theirs = 0;
        while (mine < unknowns.length || theirs < other.unknowns.length) {
            int next = Math.min(unknownAt(mine), other.unknownAt(theirs));
            Fraction sum = Fraction.ZERO;
            if (unknownAt(mine) == next) {
                sum = coefficients[mine++];
            }
            if (other.unknownAt(theirs) == next) {
                sum = sum.plus(other.coefficients[theirs++].times(factor));
            }
            if (!sum.isZero()) {
                where[terms] = next;
                what[terms++] = sum;
            }
        }
        return terms == where.length
                ? new LinearForm(where, what)
                : new LinearForm(Arrays.copyOf(where, terms), Arrays.copyOf(what, terms));
    }

    /** This form with every coefficient times a factor. */
    public LinearForm times(Fraction factor) {
        return factor.equals(Fraction.ONE) ? this : ZERO.plus(this, factor);
    }

    /** Zero for an unknown that does not occur. */
    public Fraction coefficientOf(int unknown) {
        int place = Arrays.binarySearch(unknowns, unknown);
        return place < 0 ? Fraction.ZERO : coefficients[place];
    }

    public boolean isZero() {
        return unknowns.length == 0;
    }

    /** How many unknowns occur. */
    public int terms() {
        return unknowns.length;
    }

    /** The unknowns that occur, in rising order. */
    public int[] unknowns() {
        return unknowns.clone();
    }

    /** The unknown in this place among those that occur, in rising order; beyond all others past the last. */
    int unknownAt(int place) {
        return place < unknowns.length ? unknowns[place] : Integer.MAX_VALUE;
    }

    Fraction coefficientAt(int place) {
        return coefficients[place];
    }
}
