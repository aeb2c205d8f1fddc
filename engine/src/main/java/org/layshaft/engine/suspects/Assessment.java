package org.layshaft.engine.suspects;

import java.util.BitSet;
import org.layshaft.engine.symptom.Shown;

/**
 * What faults show, held against the clues.
 *
 * @param explained by number of the clue among those seen, in hundredths
 * @param denied by number of the clue among those not seen, in hundredths
 * @param unlooked how much more would be noticed for certain that nobody looked out for
 */
record Assessment(int[] explained, int[] denied, int unlooked) {

    static Assessment of(Shown shown, Clues clues) {
        return new Assessment(
                clues.seen().stream().mapToInt(clue -> clue.explainedBy(shown)).toArray(),
                clues.notSeen().stream().mapToInt(clue -> clue.deniedBy(shown)).toArray(),
                unlooked(shown, clues).cardinality());
    }

    /** What is noticed for certain, however warm it is, and nobody looked out for. */
    static BitSet unlooked(Shown shown, Clues clues) {
        BitSet unlooked = (BitSet) shown.cold().certain().clone();
        unlooked.and(shown.hot().certain());
        unlooked.andNot(clues.covered());
        return unlooked;
    }

    /** Roughly what two faults come to together: neither takes away what the other shows. */
    static int shortfall(Assessment one, Assessment other) {
        int shortfall = 0;
        for (int i = 0; i < one.explained.length; i++) {
            shortfall += Weights.WHOLE - Math.max(one.explained[i], other.explained[i]);
        }
        for (int i = 0; i < one.denied.length; i++) {
            shortfall += Math.max(one.denied[i], other.denied[i]);
        }
        return shortfall;
    }

    /** How far they fall short of the evidence, in hundredths of one observation in one gear. */
    int shortfall() {
        return shortfall(this, this);
    }

    boolean explainsSomething() {
        for (int each : explained) {
            if (each > 0) {
                return true;
            }
        }
        return false;
    }

    boolean explainsEverything() {
        for (int each : explained) {
            if (each == 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing seen is left over, and nothing would have to be there that was not. */
    boolean fits() {
        for (int each : denied) {
            if (each == Weights.WHOLE) {
                return false;
            }
        }
        return explainsEverything();
    }
}
