package org.layshaft.web.asking.understanding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One way to put a question about parts. It is written like the others, but here the order of the words counts, and the
 * slots are {@code {set}}, {@code {box}}, {@code {place}}, and the tyres {@code {from}} and {@code {to}}.
 */
final class PartsPattern {
    private static final Pattern PIECE = Pattern.compile("\\([^)]*\\)|\\[[^\\]]*\\]|\\S+");
    private static final String WORDS = "(?: [^ ]+){1,16}?";
    private static final String TYRE = " \\d{3} \\d{2} ?z?r ?\\d{2}";

    private final Pattern compiled;

    private PartsPattern(Pattern compiled) {
        this.compiled = compiled;
    }

    /**
     * What stands in the slots; empty where the pattern has none, or it is left out.
     *
     * @param set the words, in normal form with blanks between
     */
    record Taken(
            Optional<String> set,
            Optional<String> box,
            Optional<String> place,
            Optional<String> from,
            Optional<String> to) {}

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
        return matcher.matches()
                ? Optional.of(new Taken(
                        taken(matcher, "set"),
                        taken(matcher, "box"),
                        taken(matcher, "place"),
                        taken(matcher, "from"),
                        taken(matcher, "to")))
                : Optional.empty();
    }

    private Optional<String> taken(Matcher matcher, String slot) {
        return compiled.pattern().contains("(?<" + slot + ">")
                ? Optional.ofNullable(matcher.group(slot)).map(String::strip)
                : Optional.empty();
    }
}
