package org.layshaft.engine.suspects;

import java.util.List;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Part;

/**
 * One part failing in one mode, as the evidence has it.
 *
 * @param all the ways in which it may be that explain something
 * @param ways those of them that fit best, all alike
 * @param standing the lower, the higher it ranks
 */
record Candidate(List<Way> all, List<Way> ways, int standing) {
    Candidate {
        all = List.copyOf(all);
        ways = List.copyOf(ways);
    }

    Way best() {
        return ways.get(0);
    }

    Part part() {
        return best().entry().part();
    }

    FailureMode mode() {
        return best().entry().mode();
    }

    Assessment assessment() {
        return best().assessment();
    }
}
