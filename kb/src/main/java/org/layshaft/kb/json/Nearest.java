package org.layshaft.kb.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds what a mistyped word was probably meant to be. */
public final class Nearest {
    /** Words longer than any id are not compared: it would take memory by their square. */
    private static final int LONGEST = 120;

    /** How many words are listed where none is near. */
    private static final int LISTED = 20;

    private Nearest() {}

    /** The word of these that takes fewest changed letters, if it is near at all: at most a third of them. */
    public static Optional<String> to(String typed, Collection<String> words) {
        return words.stream()
                .filter(word -> Math.max(word.length(), typed.length()) <= LONGEST)
                .filter(word -> changes(typed, word) <= Math.max(1, Math.max(typed.length(), word.length()) / 3))
                .min(Comparator.<String>comparingInt(word -> changes(typed, word))
                        .thenComparing(word -> word));
    }

    /** A sentence that offers the nearest word, or else lists the words there are. */
    public static String advice(String typed, Collection<String> words) {
        return to(typed, words)
                .map(word -> "Perhaps '%s' is meant.".formatted(word))
                .orElseGet(() -> words.isEmpty() ? "There is none that it could be." : listed(words));
    }

    private static String listed(Collection<String> words) {
        List<String> shown = words.stream().limit(LISTED).toList();
        String more = words.size() > LISTED ? " and %d more".formatted(words.size() - LISTED) : "";
        return "It can be: %s%s.".formatted(String.join(", ", shown), more);
    }

    /** Letters left out, put in, changed, or swapped with their neighbour. */
    private static int changes(String one, String other) {
        String across = one.toLowerCase(Locale.ROOT);
        String down = other.toLowerCase(Locale.ROOT);
        int[][] changes = new int[down.length() + 1][across.length() + 1];
        for (int row = 0; row <= down.length(); row++) {
            for (int column = 0; column <= across.length(); column++) {
                changes[row][column] = row == 0 || column == 0
                        ? row + column
                        : fewest(changes, row, column, down.charAt(row - 1) == across.charAt(column - 1));
                if (isSwap(across, down, row, column)) {
                    changes[row][column] = Math.min(changes[row][column], changes[row - 2][column - 2] + 1);
                }
            }
        }
        return changes[down.length()][across.length()];
    }

    private static int fewest(int[][] changes, int row, int column, boolean same) {
        int changed = changes[row - 1][column - 1] + (same ? 0 : 1);
        return Math.min(changed, Math.min(changes[row - 1][column], changes[row][column - 1]) + 1);
    }

    private static boolean isSwap(String across, String down, int row, int column) {
        return row > 1
                && column > 1
                && down.charAt(row - 1) == across.charAt(column - 2)
                && down.charAt(row - 2) == across.charAt(column - 1);
    }
}
