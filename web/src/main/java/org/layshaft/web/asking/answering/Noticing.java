package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;

/** What is noticed, the gears in which it is the same together, what is certain first. */
final class Noticing {
    private static final String NEUTRAL = "neutral";

    private final Facts facts;

    Noticing(Facts facts) {
        this.facts = facts;
    }

    /** The same thing noticed in the same circumstances; neutral, which is no gear, by itself. */
    private record Sort(String notice, String condition, boolean certain, boolean neutral) {
        static Sort of(Notice notice, String at) {
            return new Sort(notice.notice(), notice.condition(), notice.certain(), at.equals(NEUTRAL));
        }
    }

    /** A sentence each; neutral among them where no gear is asked about by itself. */
    List<String> in(List<GearVerdict> gears, boolean withNeutral) {
        Map<Sort, List<String>> where = new LinkedHashMap<>();
        gears.forEach(gear -> gear.notices().forEach(notice -> add(where, notice, gear.gear())));
        if (withNeutral) {
            facts.whatIf().neutral().notices().forEach(notice -> add(where, notice, NEUTRAL));
        }
        return Stream.of(true, false)
                .flatMap(certain -> where.entrySet().stream()
                        .filter(entry -> entry.getKey().certain() == certain)
                        .map(entry -> said(entry.getKey(), entry.getValue())))
                .toList();
    }

    private static void add(Map<Sort, List<String>> where, Notice notice, String at) {
        List<String> gears = where.computeIfAbsent(Sort.of(notice, at), none -> new ArrayList<>());
        if (!gears.contains(at)) {
            gears.add(at);
        }
    }

    private String said(Sort sort, List<String> at) {
        String gears = String.join("+", at);
        return Standing.sentence(
                sort.certain()
                        ? facts.names().noticed(sort.notice(), sort.condition(), gears)
                        : facts.names().perhapsNoticed(sort.notice(), sort.condition(), gears));
    }
}
