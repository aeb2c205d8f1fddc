package org.layshaft.kb.failure;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a failure makes a person notice.
 *
 * @param notice id of the notice in the words: {@code jumps-out}
 * @param in the situations in which it is noticed, where {@code when} holds
 * @param heat whether it is noticed only with all cold, or only with all hot; empty for either
 * @param may whether it only may be noticed, a degree not being known
 * @param side for a part that serves two gears, the side meant
 * @param onlyIf what must be told of the fault; empty for always
 */
public record NoticeLine(
        String notice,
        NoticeWhen when,
        Set<Situation> in,
        Optional<Heat> heat,
        boolean may,
        Optional<Given> side,
        Map<String, String> onlyIf) {
    public NoticeLine {
        in = Set.copyOf(in);
        onlyIf = Map.copyOf(onlyIf);
    }

    public boolean appliesTo(Map<String, String> told) {
        return told.entrySet().containsAll(onlyIf.entrySet());
    }
}
