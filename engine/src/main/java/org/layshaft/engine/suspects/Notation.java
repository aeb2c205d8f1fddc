package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/**
 * Reads evidence as it is written in addresses: items parted by semicolons, {@code [cold|hot] [situation] [gears,
 * parted by commas]: [not] notice}, and {@code after-work}. Everything before the colon may be missing.
 */
final class Notation {
    private static final String NOT = "not ";

    private final Map<String, String> notices;
    private final Map<String, String> situations = new LinkedHashMap<>();
    private final Map<String, String> heats = new LinkedHashMap<>();
    private final Map<String, String> afterWork = new LinkedHashMap<>();
    private final Map<String, String> gears = new LinkedHashMap<>();

    /** @param gears names of the gears of the layout */
    Notation(Words words, List<String> gears) {
        this.notices = spelled(words.notices());
        Map<String, String> conditions = spelled(words.conditions());
        List<String> known =
                Arrays.stream(Situation.values()).map(Situation::word).toList();
        List<String> warm = Arrays.stream(Heat.values()).map(Heat::word).toList();
        conditions.forEach((spelling, id) -> {
            if (known.contains(id)) {
                situations.put(spelling, id);
            } else {
                (warm.contains(id) ? heats : afterWork).put(spelling, id);
            }
        });
        known.forEach(word -> situations.put(word, word));
        warm.forEach(word -> heats.put(word, word));
        afterWork.values().removeIf(id -> !id.equals(Evidence.AFTER_WORK));
        afterWork.put(Evidence.AFTER_WORK, Evidence.AFTER_WORK);
        gears.forEach(gear -> {
            this.gears.put(gear.toLowerCase(Locale.ROOT), gear);
            this.gears.putIfAbsent(Names.gearName(gear).toLowerCase(Locale.ROOT), gear);
        });
    }

    Evidence read(String written) {
        List<String> problems = new ArrayList<>();
        List<Observation> observations = new ArrayList<>();
        boolean worked = false;
        for (String item : written.split("[;\n]")) {
            String text = item.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
            if (afterWork.containsKey(text)) {
                worked = true;
            } else if (!text.isEmpty()) {
                observation(text, problems).ifPresent(observations::add);
            }
        }
        if (!problems.isEmpty()) {
            throw new UnanswerableException(String.join("\n", problems));
        }
        return new Evidence(observations, worked);
    }

    private Optional<Observation> observation(String text, List<String> problems) {
        int colon = text.indexOf(':');
        String what = text.substring(colon + 1).strip();
        boolean seen = !what.startsWith(NOT);
        String named = seen ? what : what.substring(NOT.length()).strip();
        String rest = colon < 0 ? "" : text.substring(0, colon).strip();
        Optional<String> warm = begins(rest, heats);
        rest = after(rest, warm);
        Optional<String> when = begins(rest, situations);
        rest = after(rest, when);
        List<String> in = gears(rest, text, when.isPresent(), problems);
        String notice = notices.get(named);
        if (notice == null) {
            problems.add("In '%s' nothing is known that is called '%s'. %s"
                    .formatted(
                            text,
                            named,
                            Nearest.to(named, notices.keySet())
                                    .map("Perhaps '%s' is meant."::formatted)
                                    .orElseGet(() -> Nearest.advice(named, new ArrayList<>(notices.values())))));
            return Optional.empty();
        }
        return Optional.of(new Observation(
                notice,
                when.map(spelling -> of(Situation.values(), Situation::word, situations.get(spelling))),
                in,
                seen,
                warm.map(spelling -> of(Heat.values(), Heat::word, heats.get(spelling)))));
    }

    private List<String> gears(String text, String item, boolean situationTold, List<String> problems) {
        List<String> in = new ArrayList<>();
        for (String each : text.split(",")) {
            String gear = each.strip();
            if (gear.isEmpty()) {
                continue;
            }
            if (gears.containsKey(gear)) {
                in.add(gears.get(gear));
            } else if (situationTold) {
                problems.add("In '%s' there is no gear '%s'. There are %s."
                        .formatted(item, gear, String.join(", ", List.copyOf(new LinkedHashSet<>(gears.values())))));
            } else {
                problems.add("In '%s' '%s' is neither a situation nor a gear. %s"
                        .formatted(item, gear, Nearest.advice(gear.split(" ")[0], situations.values())));
            }
        }
        return in;
    }

    /** The longest of these spellings that the text begins with. */
    private static Optional<String> begins(String text, Map<String, String> spellings) {
        return spellings.keySet().stream()
                .filter(spelling -> text.equals(spelling) || text.startsWith(spelling + " "))
                .max((one, other) -> Integer.compare(one.length(), other.length()));
    }

    private static String after(String text, Optional<String> begun) {
        return begun.map(spelling -> text.substring(spelling.length()).strip()).orElse(text);
    }

    private static <E> E of(E[] values, Function<E, String> word, String id) {
        return Stream.of(values)
                .filter(value -> word.apply(value).equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Ids by every spelling; ids themselves before other words. */
    private static Map<String, String> spelled(Map<String, Term> terms) {
        Map<String, String> spelled = new LinkedHashMap<>();
        terms.keySet().forEach(id -> spelled.put(id, id));
        terms.forEach((id, term) -> Stream.concat(Stream.of(term.name()), term.also().stream())
                .forEach(word -> spelled.putIfAbsent(word.toLowerCase(Locale.ROOT), id)));
        return spelled;
    }
}
