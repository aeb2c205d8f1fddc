package org.layshaft.web.asking.understanding;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One way to put a question about parts. It is written like the others, but here the order of the words counts, and the
 * slots are {@code {set}}, {@code {box}}, {@code {place}}, the tyres {@code {from}} and {@code {to}}, and those of
 * {@link #NARROW}.
 */
final class PartsPattern {
    private static final Pattern PIECE = Pattern.compile("\\([^)]*\\)|\\[[^\\]]*\\]|\\S+");
    private static final String WORDS = "(?: [^ ]+){1,16}?";
    private static final String TYRE = " \\d{3} \\d{2} ?z?r ?\\d{2}";

    private static final String NUMBER = " \\d{1,4}(?:\\.\\d{1,4})?";
    private static final String GEAR = " (?:\\d{1,2}|r)";

    /** Slots for one gear or one number. */
    private static final Map<String, String> NARROW = Map.of(
            "gear", GEAR,
            "other", GEAR,
            "rpm", " \\d{3,5}",
            "kmh", NUMBER,
            "mph", NUMBER,
            "ratio", NUMBER,
            "teeth", " \\d{1,3}",
            "tip", NUMBER,
            "helix", NUMBER);

    private static final Pattern SLOT = Pattern.compile("\\(\\?<([a-z]+)>");

    private final Pattern compiled;
    private final List<String> slots;

    private PartsPattern(Pattern compiled) {
        this.compiled = compiled;
        this.slots = SLOT.matcher(compiled.pattern())
                .results()
                .map(slot -> slot.group(1))
                .toList();
    }

    /**
     * What stands in the slots.
     *
     * @param slots the words of each, in normal form with blanks between; a slot that the pattern has not, or that is left
     *     out, is missing
     */
    record Taken(Map<String, String> slots) {
        Optional<String> in(String slot) {
            return Optional.ofNullable(slots.get(slot));
        }
    }

    /** @param boxes every name of a box, in normal form with blanks between */
    static PartsPattern of(String written, Collection<String> boxes) {
        String regex = PIECE.matcher(written)
                .results()
                .map(piece -> piece(piece.group(), boxes))
                .collect(Collectors.joining());
        return new PartsPattern(Pattern.compile(regex));
    }

    private static String piece(String written, Collection<String> boxes) {
        boolean optional = written.startsWith("(");
        String inner = optional || written.startsWith("[") ? written.substring(1, written.length() - 1) : written;
        String either = Stream.of(inner.split("\\|"))
                .map(way -> Stream.of(way.strip().split(" +"))
                        .map(word -> word(word, boxes))
                        .collect(Collectors.joining()))
                .filter(way -> !way.isEmpty())
                .collect(Collectors.joining("|"));
        return either.isEmpty() ? "" : "(?:" + either + ")" + (optional ? "?" : "");
    }

    private static String word(String word, Collection<String> boxes) {
        String slot = word.startsWith("{") ? word.substring(1, word.length() - 1) : "";
        if (NARROW.containsKey(slot)) {
            boolean gear = NARROW.get(slot).equals(GEAR);
            return "(?<%s>%s)%s".formatted(slot, NARROW.get(slot), gear ? "(?: gear)?" : "");
        }
        return switch (word) {
            case "{set}" -> "(?<set>" + WORDS + ")";
            case "{place}" -> "(?<place>" + WORDS + ")";
            case "{from}" -> "(?<from>" + TYRE + ")";
            case "{to}" -> "(?<to>" + TYRE + ")";
            case "{box}" ->
                boxes.stream()
                        .sorted(Comparator.comparing(String::length).reversed())
                        .map(box -> " " + Pattern.quote(box))
                        .collect(Collectors.joining("|", "(?<box>", ")"));
            default ->
                Tokens.normal(word).stream()
                        .map(token -> " " + Pattern.quote(token))
                        .collect(Collectors.joining());
        };
    }

    /** Empty where the words are put otherwise. */
    Optional<Taken> match(List<String> words) {
        Matcher matcher =
                compiled.matcher(words.stream().map(word -> " " + word).collect(Collectors.joining()));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Map<String, String> taken = new LinkedHashMap<>();
        slots.forEach(
                slot -> Optional.ofNullable(matcher.group(slot)).ifPresent(text -> taken.put(slot, text.strip())));
        return Optional.of(new Taken(taken));
    }
}
