package org.layshaft.web.desk;

import java.util.List;
import java.util.function.Predicate;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.NextTest;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspects;
import org.layshaft.kb.layout.Layout;

/** What was noticed of a box, and what may be wrong with it. */
public record Diagnosis(Layout layout, List<Understood> understood, Suspects suspects) {
    public Diagnosis {
        understood = List.copyOf(understood);
    }

    /** An observation, and how it is said. */
    public record Understood(Observation observation, String says) {}

    public Evidence evidence() {
        return suspects.evidence();
    }

    /** {@code 1}, or {@code 1=} where several are tied. */
    public static String rank(Suspect suspect, List<Suspect> among) {
        Predicate<Suspect> tied = other -> other.rank() == suspect.rank();
        return suspect.rank() + (among.stream().filter(tied).count() > 1 ? "=" : "");
    }

    /** What an outcome of a test would come to: the evidence with it. */
    public Evidence after(NextTest.Outcome outcome) {
        Evidence more = evidence();
        for (Observation observation : outcome.evidence()) {
            more = more.with(observation);
        }
        return more;
    }
}
