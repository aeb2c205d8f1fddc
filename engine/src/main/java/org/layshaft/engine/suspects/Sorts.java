package org.layshaft.engine.suspects;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/** Which notices are sorts of which: who hears a growl hears a noise, and may take it for a whine. */
final class Sorts {
    private final Map<String, Term> notices;
    private final Map<String, Set<String>> families = new LinkedHashMap<>();

    Sorts(Words words) {
        this.notices = words.notices();
        notices.keySet()
                .forEach(notice -> families.computeIfAbsent(family(notice), any -> new LinkedHashSet<>())
                        .add(notice));
    }

    /** The most general notice that this is a sort of; itself where it is of none. */
    String family(String notice) {
        String general = notice;
        while (notices.get(general).sort().isPresent()) {
            general = notices.get(general).sort().get();
        }
        return general;
    }

    /** The notice and every sort of it. */
    Set<String> of(String notice) {
        Set<String> sorts = new LinkedHashSet<>();
        for (String each : families.get(family(notice))) {
            if (isOf(each, notice)) {
                sorts.add(each);
            }
        }
        return sorts;
    }

    /** What else is of its family, and easily taken for it. */
    Set<String> kin(String notice) {
        Set<String> kin = new LinkedHashSet<>(families.get(family(notice)));
        kin.removeAll(of(notice));
        return kin;
    }

    Set<String> families() {
        return families.keySet();
    }

    private boolean isOf(String notice, String general) {
        return notice.equals(general)
                || notices.get(notice)
                        .sort()
                        .filter(sort -> isOf(sort, general))
                        .isPresent();
    }
}
