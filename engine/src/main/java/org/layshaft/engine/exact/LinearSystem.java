package org.layshaft.engine.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Linear equations, each a form that must be zero, solved exactly as they come in: every equation that says something
 * new gives one unknown as a form in others. The solutions can be read off at any time as forms in what is still free.
 *
 * <p>Numbers that are given, rather than unknown, go in as multiples of one unknown that stands for 1 and is solved for
 * last. It is zero in every solution exactly where the equations contradict what is given.
 *
 * <p>Not thread-safe.
 */
public final class LinearSystem {
    private final int one;
    private final boolean[] solved;
    private final LinearForm[] values;

    /**
     * A system without equations.
     *
     * @param unknowns how many, the one that stands for 1 not counted
     */
    public LinearSystem(int unknowns) {
        one = unknowns;
        solved = new boolean[unknowns + 1];
        values = new LinearForm[unknowns + 1];
        for (int unknown = 0; unknown <= unknowns; unknown++) {
            values[unknown] = LinearForm.of(unknown, Fraction.ONE);
        }
    }

    /** The unknown that stands for 1; it comes after all others. */
    public int one() {
        return one;
    }

    /** Adds the equation that this form is zero. */
    public void require(LinearForm form) {
        LinearForm left = inFreeUnknowns(form);
        if (left.isZero()) {
            return;
        }
        int pivot = pivot(left);
        Fraction scale = left.coefficientOf(pivot).inverse().negated();
        values[pivot] = values[pivot].plus(left, scale);
        solved[pivot] = true;
    }

    /** Whether there is a solution with the unknown that stands for 1 being 1. */
    public boolean isSolvable() {
        return !solved[one];
    }

    /** An unknown as a form in those that are free. */
    public LinearForm valueOf(int unknown) {
        if (solved[unknown] && hasSolvedUnknowns(values[unknown])) {
            values[unknown] = inFreeUnknowns(values[unknown]);
        }
        return values[unknown];
    }

    /** The unknowns that may be chosen at will, in rising order; the one that stands for 1 is not among them. */
    public List<Integer> free() {
        return IntStream.range(0, one)
                .filter(unknown -> !solved[unknown])
                .boxed()
                .toList();
    }

    /** Settles what is free so that the sum of the squares of all unknowns is the least that it can be. */
    public void settleAtLeastSquares() {
        List<LinearForm> slopes = new ArrayList<>();
        for (int unknown : free()) {
            LinearForm slope = LinearForm.ZERO;
            for (int each = 0; each < one; each++) {
                slope = slope.plus(valueOf(each), valueOf(each).coefficientOf(unknown));
            }
            slopes.add(slope);
        }
        slopes.forEach(this::require);
    }

    private boolean hasSolvedUnknowns(LinearForm form) {
        for (int unknown : form.unknowns()) {
            if (solved[unknown]) {
                return true;
            }
        }
        return false;
    }

    private LinearForm inFreeUnknowns(LinearForm form) {
        LinearForm result = LinearForm.ZERO;
        for (int unknown : form.unknowns()) {
            result = result.plus(valueOf(unknown), form.coefficientOf(unknown));
        }
        return result;
    }

    /** The last unknown of a form, but {@link #one} only where there is no other. */
    private int pivot(LinearForm form) {
        int[] unknowns = form.unknowns();
        int last = unknowns.length - 1;
        return unknowns[last] == one && last > 0 ? unknowns[last - 1] : unknowns[last];
    }
}
