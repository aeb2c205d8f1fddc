package org.layshaft.engine.exact;

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

    private boolean hasSolvedUnknowns(LinearForm form) {
        for (int place = 0; place < form.terms(); place++) {
            if (solved[form.unknownAt(place)]) {
                return true;
            }
        }
        return false;
    }

    private LinearForm inFreeUnknowns(LinearForm form) {
        LinearForm result = LinearForm.ZERO;
        for (int place = 0; place < form.terms(); place++) {
            result = result.plus(valueOf(form.unknownAt(place)), form.coefficientAt(place));
        }
        return result;
    }

    /** The last unknown of a form, but {@link #one} only where there is no other. */
    private int pivot(LinearForm form) {
        int last = form.terms() - 1;
        return form.unknownAt(form.unknownAt(last) == one && last > 0 ? last - 1 : last);
    }
}
