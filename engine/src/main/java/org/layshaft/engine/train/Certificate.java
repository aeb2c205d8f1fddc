package org.layshaft.engine.train;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/**
 * What an outcome rests on, in a form that can be checked by putting in, without solving anything.
 *
 * @param outcome what is claimed of input and output
 * @param motions speeds of every body by id; each motion satisfies every equation, and together they show what can turn
 * @param proofs what the equations add up to; together they show what cannot turn, or cannot turn otherwise
 */
public record Certificate(Outcome outcome, List<Map<String, Fraction>> motions, List<Proof> proofs) {
    public Certificate {
        motions = List.copyOf(motions);
        proofs = List.copyOf(proofs);
    }

    /**
     * A sum of speeds that is zero in every motion.
     *
     * @param sum coefficients by body id: the input alone is held; the input less twice the output keeps a ratio of 2
     * @param multipliers by connection id; the equations times these add up to the sum, and an absent one counts as zero
     */
    public record Proof(Map<String, Fraction> sum, Map<String, Fraction> multipliers) {
        public Proof {
            sum = Collections.unmodifiableMap(new LinkedHashMap<>(sum));
            multipliers = Collections.unmodifiableMap(new LinkedHashMap<>(multipliers));
        }
    }
}
