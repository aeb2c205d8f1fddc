package org.layshaft.web.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody looks for, taken out of words: {@code two-shaft, five-speed, reverse on a sleeve}. The longest words that
 * mean something are taken first; whatever is left over was not understood, and is told.
 *
 * @param terms what must all hold
 * @param leftOver words that mean nothing here
 */
public record Wanted(List<Term> terms, List<String> leftOver) {
    private static final List<String> NUMBERS = List.of(
            "no",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
            "twenty");
    private static final String NUMBER = "(\\d{1,2}|" + String.join("|", NUMBERS.subList(1, NUMBERS.size())) + ")";
    private static final Pattern SPEEDS = counted("(?:speeds?|forward (?:gears?|speeds?|ratios?)|gears(?: forward)?)");
    private static final Pattern SHAFTS = counted("shafts?");
    private static final Pattern NOT =
            Pattern.compile("(?:\\b(?:no|not|without|not a|without an?|without any|isn't|never)) $");
    private static final Set<String> PASSED_OVER = Set.of(
            "a",
            "an",
            "the",
            "and",
            "with",
            "that",
            "has",
            "have",
            "having",
            "is",
            "are",
            "in",
            "of",
            "on",
            "for",
            "its",
            "it",
            "box",
            "boxes",
            "gearbox",
            "gearboxes",
            "layout",
            "layouts",
            "transmission",
            "transmissions",
            "which",
            "any",
            "all",
            "every",
            "show",
            "find",
            "me",
            "one",
            "ones",
            "where",
            "what",
            "but",
            "also",
            "by",
            "manual");

    public Wanted {
        terms = List.copyOf(terms);
        leftOver = List.copyOf(leftOver);
    }

    /**
     * One thing that must hold.
     *
     * @param says {@code reverse on a sleeve}, {@code not inline box}
     */
    public record Term(String says, Predicate<Likeness> holds) {}

    /** Words that mean something, from one place to another. */
    private record Found(int from, int to, Term term) {}

    static Wanted read(String words, List<String> names) {
        String text = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}'-]+", " ")
                .strip();
        List<Found> found = new ArrayList<>();
        for (Property property : Property.values()) {
            find(property.pattern(), text, found, match -> new Term(property.says(), property::holds));
        }
        find(SPEEDS, text, found, match -> number(match, "forward speed", Likeness::forward));
        find(SHAFTS, text, found, match -> number(match, "shaft", Likeness::shafts));
        for (String name : names) {
            find(
                    Pattern.compile("\\b" + Pattern.quote(name.toLowerCase(Locale.ROOT)) + "\\b"),
                    text,
                    found,
                    match -> new Term(
                            "called " + name, each -> each.layout().name().equals(name)));
        }
        return taken(text, found);
    }

    private interface Meant {
        Term of(Matcher match);
    }

    private static void find(Pattern pattern, String text, List<Found> found, Meant meant) {
        Matcher match = pattern.matcher(text);
        while (match.find()) {
            Term term = meant.of(match);
            Matcher not = NOT.matcher(text.substring(0, match.start()));
            found.add(
                    not.find()
                            ? new Found(
                                    not.start(),
                                    match.end(),
                                    new Term("not: " + term.says(), term.holds().negate()))
                            : new Found(match.start(), match.end(), term));
        }
    }

    /** The longest first, and none that overlaps another. */
    private static Wanted taken(String text, List<Found> found) {
        List<Found> kept = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparingInt((Found each) -> each.from() - each.to()))
                .filter(each -> kept.stream().noneMatch(other -> each.from() < other.to() && other.from() < each.to()))
                .forEach(kept::add);
        kept.sort(Comparator.comparingInt(Found::from));
        StringBuilder rest = new StringBuilder(text);
        kept.forEach(each -> rest.replace(each.from(), each.to(), " ".repeat(each.to() - each.from())));
        List<String> leftOver = List.of(rest.toString().strip().split("\\s+")).stream()
                .filter(word -> !word.isEmpty() && !PASSED_OVER.contains(word))
                .distinct()
                .toList();
        return new Wanted(kept.stream().map(Found::term).toList(), leftOver);
    }

    private static Pattern counted(String what) {
        return Pattern.compile("\\b(at least |more than |at most |fewer than )?%s(?: or (more|fewer))?[- ]%s\\b"
                .formatted(NUMBER, what));
    }

    private static Term number(Matcher match, String what, ToIntFunction<Likeness> of) {
        int wanted = count(match.group(2));
        String before = Optional.ofNullable(match.group(1)).orElse("").strip();
        String after = Optional.ofNullable(match.group(3)).orElse("");
        String counted = wanted + " " + what + (wanted == 1 ? "" : "s");
        if (before.equals("at least") || after.equals("more")) {
            return new Term("at least " + counted, each -> of.applyAsInt(each) >= wanted);
        } else if (before.equals("at most") || after.equals("fewer")) {
            return new Term("at most " + counted, each -> of.applyAsInt(each) <= wanted);
        } else if (before.equals("more than")) {
            return new Term("more than " + counted, each -> of.applyAsInt(each) > wanted);
        } else if (before.equals("fewer than")) {
            return new Term("fewer than " + counted, each -> of.applyAsInt(each) < wanted);
        }
        return new Term(counted, each -> of.applyAsInt(each) == wanted);
    }

    private static int count(String written) {
        int spelt = NUMBERS.indexOf(written);
        return spelt >= 0 ? spelt : Integer.parseInt(written);
    }
}
