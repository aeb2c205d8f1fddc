package org.layshaft.kb.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what a mistyped word was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /** The word of these that takes fewest changed letters, if it is near at all: at most a third of them. */
    public static Optional<String> to(String typed, Collection<String> words) {
        return words.stream()
                .filter(word -> changes(typed, word) <= Math.max(1, Math.max(typed.length(), word.length()) / 3))
                .min(Comparator.<String>comparingInt(word -> changes(typed, word))
                        .thenComparing(word -> word));
    }

    /** A sentence that offers the nearest word, or else lists the words there are. */
    public static String advice(String typed, Collection<String> words) {
        return to(typed, words)
                .map(word -> "Perhaps '%s' is meant.".formatted(word))
                .orElseGet(() -> words.isEmpty()
                        ? "There is none that it could be."
                        : "It can be: %s.".formatted(String.join(", ", words)));
    }

    private static int changes(String one, String other) {
        String across = one.toLowerCase(Locale.ROOT);
        String down = other.toLowerCase(Locale.ROOT);
        int[] before = new int[across.length() + 1];
        for (int column = 0; column < before.length; column++) {
            before[column] = column;
        }
        for (int row = 1; row <= down.length(); row++) {
            int[] now = new int[before.length];
            now[0] = row;
            for (int column = 1; column < now.length; column++) {
                int swapped = across.charAt(column - 1) == down.charAt(row - 1) ? 0 : 1;
                now[column] = Math.min(before[column - 1] + swapped, Math.min(before[column], now[column - 1]) + 1);
            }
            before = now;
        }
        return before[across.length()];
    }
}
