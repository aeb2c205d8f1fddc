package org.layshaft.engine.api;

import java.util.List;
import org.layshaft.kb.failure.Fault;

/**
 * One way things may be, where something of a fault is not known.
 *
 * @param faults the faults with everything told
 * @param says in words, what is supposed here beyond what was told: {@code the 3-4 fork is bent badly toward the front};
 *     empty where nothing is
 */
public record Possibility(
        List<Fault> faults, String says, Verdict verdict, List<Notice> notices, List<Reason> because) {
    public Possibility {
        faults = List.copyOf(faults);
        notices = List.copyOf(notices);
        because = List.copyOf(because);
    }
}
