package org.layshaft.kb.failure;

import java.util.Map;
import java.util.Optional;

/**
 * What a failure makes a person notice.
 *
 * @param notice id of the notice in the words: {@code jumps-out}
 * @param side for a part that serves two gears, the side meant
 * @param onlyIf what must be told of the fault; empty for always
 */
public record NoticeLine(String notice, NoticeWhen when, Optional<Given> side, Map<String, String> onlyIf) {
    public NoticeLine {
        onlyIf = Map.copyOf(onlyIf);
    }

    public boolean appliesTo(Map<String, String> told) {
        return told.entrySet().containsAll(onlyIf.entrySet());
    }
}
