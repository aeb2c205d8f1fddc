package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;

/**
 * One thing that is noticed in several situations and several gears, told in one sentence.
 *
 * @param certain whether it is noticed for certain; otherwise it may be
 * @param conditions ids of the situations
 * @param gears names of the gears; {@link #NEUTRAL} alone for neutral
 */
public record NoticedTogether(
        String notice, boolean certain, Optional<Heat> heat, List<String> conditions, List<String> gears) {
    public static final String NEUTRAL = "neutral";

    public NoticedTogether {
        conditions = List.copyOf(conditions);
        gears = List.copyOf(gears);
    }

    /** What of a notice must be alike to be told together. */
    private record Kind(String notice, boolean certain, Optional<Heat> heat) {}

    /** What is noticed in one gear, or in neutral, what is certain first. */
    public static List<NoticedTogether> in(String gear, List<Notice> notices) {
        return in(Map.of(gear, notices));
    }

    /**
     * What is noticed, what is certain first.
     *
     * @param byGear by name of the gear, or {@link #NEUTRAL}
     */
    public static List<NoticedTogether> in(Map<String, List<Notice>> byGear) {
        Map<NoticedTogether, List<String>> gears = new LinkedHashMap<>();
        byGear.forEach((gear, notices) -> kinds(notices).forEach((kind, conditions) -> {
            List<String> apart = gear.equals(NEUTRAL) ? List.of(NEUTRAL) : List.of();
            gears.computeIfAbsent(
                            new NoticedTogether(kind.notice(), kind.certain(), kind.heat(), conditions, apart),
                            none -> new ArrayList<>())
                    .add(gear);
        }));
        return Stream.of(true, false)
                .flatMap(certain -> gears.entrySet().stream()
                        .filter(entry -> entry.getKey().certain() == certain)
                        .map(entry -> entry.getKey().in(entry.getValue())))
                .toList();
    }

    private static Map<Kind, List<String>> kinds(List<Notice> notices) {
        Map<Kind, List<String>> kinds = new LinkedHashMap<>();
        for (Notice notice : notices) {
            boolean certainAnyway =
                    !notice.certain() && notices.stream().anyMatch(other -> other.certain() && alike(notice, other));
            List<String> conditions = kinds.computeIfAbsent(
                    new Kind(notice.notice(), notice.certain() || certainAnyway, notice.heat()),
                    none -> new ArrayList<>());
            if (!conditions.contains(notice.condition())) {
                conditions.add(notice.condition());
            }
        }
        return kinds;
    }

    private static boolean alike(Notice one, Notice other) {
        return one.notice().equals(other.notice())
                && one.condition().equals(other.condition())
                && one.heat().equals(other.heat());
    }

    private NoticedTogether in(List<String> some) {
        return new NoticedTogether(notice, certain, heat, conditions, some);
    }

    /** {@code pulling and on the overrun in 3rd and 4th: it growls}. */
    public String says(Names names) {
        String in = names.gear(String.join("+", gears));
        return told(names, " in " + (certain ? in : in.replace(" and ", " or ")));
    }

    /** The same beside the name of its gear: {@code pulling and on the overrun: it growls}. */
    public String saysWithoutGear(Names names) {
        return told(names, "");
    }

    private String told(Names names, String in) {
        String all = String.join("+", gears);
        String ending = " in " + names.gear(all);
        List<String> plain = new ArrayList<>();
        List<String> ofGear = new ArrayList<>();
        for (String condition : conditions) {
            String when = names.when(condition, all);
            if (when.endsWith(ending)) {
                plain.add(when.substring(0, when.length() - ending.length()));
            } else {
                ofGear.add(
                        certain
                                ? when
                                : when.replace(names.gear(all), names.gear(all).replace(" and ", " or ")));
            }
        }
        List<String> whens = new ArrayList<>();
        if (!plain.isEmpty()) {
            whens.add(Names.joined(plain) + in);
        }
        whens.addAll(ofGear);
        return "%s%s: %s"
                .formatted(
                        Names.joined(whens),
                        heat.map(each -> ", " + names.heat(each)).orElse(""),
                        certain ? names.says(notice) : names.may(notice));
    }
}
