package org.layshaft.engine.api;

import java.util.List;
import org.layshaft.kb.failure.Commonness;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Situation;

/**
 * One fault, or two at once, that may be behind it.
 *
 * @param rank from 1; suspects of one rank are tied, nothing that is known tells them apart
 * @param faults what is told of them is what the evidence points to; what it leaves open is not told
 * @param ways every way that fits as well, with everything told; one where the evidence leaves nothing open
 * @param says them in words: {@code the third needle bearing is worn}
 * @param shortfall how far it falls short of the evidence, in hundredths of one observation in one gear; lower is better
 * @param normal whether it is no fault, but how a sound box behaves
 * @param explains what was noticed and would follow from it
 * @param unexplained what was noticed and would not
 * @param wrong what would follow from it for certain, was looked out for and was not there
 * @param predicts what else would follow for certain, that nobody has looked out for
 * @param common how often it is met; of two faults, the rarer
 * @param seenAt how far one must dismantle to see it; of two faults, the farther
 * @param reasons why it stands where it does, beyond what it explains
 * @param account what a technician could read to a customer
 */
public record Suspect(
        int rank,
        List<Fault> faults,
        List<List<Fault>> ways,
        String says,
        int shortfall,
        boolean normal,
        List<Explained> explains,
        List<Observation> unexplained,
        List<Observation> wrong,
        List<Sign> predicts,
        Commonness common,
        List<String> basis,
        List<String> confirm,
        Depth seenAt,
        List<String> cautions,
        List<String> leadsTo,
        List<String> reasons,
        String account) {
    public Suspect {
        faults = List.copyOf(faults);
        ways = List.copyOf(ways);
        explains = List.copyOf(explains);
        unexplained = List.copyOf(unexplained);
        wrong = List.copyOf(wrong);
        predicts = List.copyOf(predicts);
        basis = List.copyOf(basis);
        confirm = List.copyOf(confirm);
        cautions = List.copyOf(cautions);
        leadsTo = List.copyOf(leadsTo);
        reasons = List.copyOf(reasons);
    }

    /** Whether it explains all that was noticed, in part at least, and nothing would have to be there that was not. */
    public boolean fits() {
        return unexplained.isEmpty() && wrong.isEmpty();
    }

    /**
     * An observation that would follow.
     *
     * @param observation of those gears only in which it would
     */
    public record Explained(Observation observation, Degree degree) {}

    /** How well a fault explains an observation. */
    public enum Degree {
        /** It would be noticed for certain. */
        SURELY,
        /** It may be noticed. */
        PERHAPS,
        /** Another sort of the same would be noticed: another noise. */
        IN_PART
    }

    /**
     * Something to be noticed.
     *
     * @param gears in which it is, by derived name; none where the situation is not in gear
     * @param says it in words: {@code pulling in 3rd: it growls}
     */
    public record Sign(String notice, Situation situation, List<String> gears, String says) {
        public Sign {
            gears = List.copyOf(gears);
        }
    }
}
