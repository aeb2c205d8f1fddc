package org.layshaft.engine.suspects;

import java.util.BitSet;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.symptom.Shown;
import org.layshaft.engine.symptom.Signs;

/**
 * One observation in one gear, as numbers of the cells.
 *
 * @param observation of this gear only
 * @param exact what it names: any of these
 * @param kin what it may have been taken for
 */
record Clue(Observation observation, BitSet exact, BitSet kin) {

    boolean seen() {
        return observation.seen();
    }

    /** How far a fault that shows this explains it, in hundredths. */
    int explainedBy(Shown shown) {
        return observation
                .heat()
                .map(heat -> explainedBy(shown.at(heat)))
                .orElseGet(() -> Math.max(explainedBy(shown.cold()), explainedBy(shown.hot())));
    }

    /** How far such a fault would have shown what was not there, in hundredths. */
    int deniedBy(Shown shown) {
        return observation.heat().map(heat -> deniedBy(shown.at(heat))).orElseGet(() -> {
            int cold = deniedBy(shown.cold());
            int hot = deniedBy(shown.hot());
            // It may have been the other way in which it shows nothing.
            return cold == hot ? cold : Math.min(Weights.PERHAPS_WRONG, Math.max(cold, hot));
        });
    }

    /** Whether what is seen here was, by the other, not to be noticed at all. */
    boolean contradicts(Clue other) {
        boolean sameHeat =
                other.observation.heat().isEmpty() || other.observation.heat().equals(observation.heat());
        BitSet left = (BitSet) exact.clone();
        left.andNot(other.exact);
        return seen() && !other.seen() && sameHeat && left.isEmpty();
    }

    private int explainedBy(Signs signs) {
        if (signs.certain().intersects(exact)) {
            return Weights.WHOLE;
        }
        if (signs.perhaps().intersects(exact)) {
            return Weights.PERHAPS;
        }
        if (signs.certain().intersects(kin)) {
            return Weights.IN_PART;
        }
        return signs.perhaps().intersects(kin) ? Weights.PERHAPS_IN_PART : 0;
    }

    private int deniedBy(Signs signs) {
        if (signs.certain().intersects(exact)) {
            return Weights.WHOLE;
        }
        return signs.perhaps().intersects(exact) ? Weights.PERHAPS_WRONG : 0;
    }
}
