package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One way to put a question.
 *
 * <p>Written as words with blanks between them. Of {@code [turn|spin|go round]} one is wanted; {@code turn|spin} is the
 * same for single words; what stands in round brackets, {@code (still|yet)}, may be missing. {@code {gear}},
 * {@code {part}} and {@code {faults}} stand for whatever is mentioned of that kind. The order of the words does not
 * matter. A word counts in its normal form: {@code turns} is {@code turn}.
 *
 * @param written as it stands in the pack
 * @param words every word that occurs
 */
record Pattern(String written, List<Element> elements, Set<String> words) {

    /** What a slot takes. */
    enum Slot {
        GEAR,
        PART,
        FAULTS
    }

    /** A piece of a pattern. */
    sealed interface Element {
        boolean optional();
    }

    /** One of several words or runs of words. */
    record Choice(List<List<String>> ways, boolean optional) implements Element {}

    /** A slot. */
    record Wanted(Slot slot, boolean optional) implements Element {}

    static Pattern of(String written) {
        List<Element> elements = new ArrayList<>();
        int at = 0;
        while (at < written.length()) {
            char sign = written.charAt(at);
            int end = end(written, at, sign);
            String piece = written.substring(at, end);
            if (!piece.isBlank()) {
                element(piece).ifPresent(elements::add);
            }
            at = end + (sign == ' ' ? 1 : 0);
        }
        return new Pattern(written, List.copyOf(elements), words(elements));
    }

    private static Set<String> words(List<Element> elements) {
        return elements.stream()
                .filter(Choice.class::isInstance)
                .flatMap(element -> ((Choice) element).ways().stream())
                .flatMap(List::stream)
                .collect(Collectors.toSet());
    }

    private static int end(String written, int at, char sign) {
        char closing = sign == '(' ? ')' : sign == '[' ? ']' : ' ';
        int end = written.indexOf(closing, at);
        if (end < 0 && closing != ' ') {
            throw new IllegalArgumentException("The pattern '%s' lacks a '%s'".formatted(written, closing));
        }
        return end < 0 ? written.length() : closing == ' ' ? end : end + 1;
    }

    /** Empty for a piece that holds nothing but articles, which do not count. */
    private static Optional<Element> element(String piece) {
        boolean optional = piece.startsWith("(");
        String inner = optional || piece.startsWith("[") ? piece.substring(1, piece.length() - 1) : piece;
        if (inner.startsWith("{")) {
            return Optional.of(new Wanted(slot(inner), optional));
        }
        List<List<String>> ways = Arrays.stream(inner.split("\\|"))
                .map(Tokens::normal)
                .filter(way -> !way.isEmpty())
                .toList();
        return ways.isEmpty() ? Optional.empty() : Optional.of(new Choice(ways, optional));
    }

    private static Slot slot(String written) {
        for (Slot slot : Slot.values()) {
            if (written.equalsIgnoreCase("{" + slot.name() + "}")) {
                return slot;
            }
        }
        throw new IllegalArgumentException("%s is no slot; there are {gear}, {part} and {faults}".formatted(written));
    }
}
