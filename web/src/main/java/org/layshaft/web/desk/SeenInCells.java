package org.layshaft.web.desk;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Situation;
import org.layshaft.web.desk.FaultTable.Seen;

/** Puts together what is noticed in one situation of one gear, each thing once, what is certain first. */
final class SeenInCells {
    private final Names names;

    SeenInCells(Names names) {
        this.names = names;
    }

    List<Seen> of(Situation situation, List<Notice> notices, List<Possibility> possibilities) {
        Map<List<Object>, Notice> each = new LinkedHashMap<>();
        notices.stream()
                .filter(notice -> notice.condition().equals(situation.word()))
                .forEach(notice -> each.merge(
                        List.of(notice.notice(), notice.heat()),
                        notice,
                        (one, other) -> other.certain() && !one.certain() ? other : one));
        return each.values().stream()
                .map(notice -> seen(notice, possibilities))
                .sorted(Comparator.comparing(Seen::certain).reversed())
                .toList();
    }

    private Seen seen(Notice notice, List<Possibility> possibilities) {
        return new Seen(
                notice.notice(),
                notice.heat(),
                notice.certain(),
                notice.certain() ? List.of() : onlyIf(notice, possibilities),
                says(notice),
                notice.because());
    }

    private String says(Notice notice) {
        String clause = notice.certain() ? names.says(notice.notice()) : names.may(notice.notice());
        return clause + notice.heat().map(heat -> ", " + names.heat(heat)).orElse("");
    }

    private static List<String> onlyIf(Notice notice, List<Possibility> possibilities) {
        List<String> with = possibilities.stream()
                .filter(possibility -> isAmong(notice, possibility.notices()))
                .map(Possibility::says)
                .toList();
        return with.size() == possibilities.size() ? List.of() : with;
    }

    private static boolean isAmong(Notice notice, Collection<Notice> notices) {
        return notices.stream()
                .anyMatch(each -> each.notice().equals(notice.notice())
                        && each.condition().equals(notice.condition())
                        && each.heat().equals(notice.heat()));
    }
}
