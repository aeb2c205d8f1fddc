package org.layshaft.engine.symptom;

import java.util.BitSet;

/**
 * What is noticed, as numbers of {@link Cells}. Not to be changed once handed on.
 *
 * @param certain what is noticed
 * @param perhaps what only may be noticed; none of it is in the other
 */
public record Signs(BitSet certain, BitSet perhaps) {

    static Signs none() {
        return new Signs(new BitSet(), new BitSet());
    }

    /** Both together. */
    Signs and(Signs other) {
        BitSet both = (BitSet) certain.clone();
        both.or(other.certain);
        BitSet either = (BitSet) perhaps.clone();
        either.or(other.perhaps);
        either.andNot(both);
        return new Signs(both, either);
    }

    /** Whether it is noticed, or may be. */
    public boolean has(int number) {
        return certain.get(number) || perhaps.get(number);
    }
}
