package org.layshaft.web.desk;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds what somebody may have meant: the known words with the fewest changed, added or dropped letters. */
final class Nearest {
    private static final int MOST = 5;

    private Nearest() {}

    /** The known words near to this one, nearest first, at most five. */
    static List<String> to(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        int reach = Math.max(2, wanted.length() / 2);
        return known.stream()
                .filter(candidate -> candidate.contains(wanted) || distance(wanted, candidate) <= reach)
                .sorted(Comparator.comparingInt((String candidate) -> distance(wanted, candidate))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    private static int distance(String from, String to) {
        String other = to.toLowerCase(Locale.ROOT);
        int[] above = new int[other.length() + 1];
        for (int column = 0; column < above.length; column++) {
            above[column] = column;
        }
        for (int row = 1; row <= from.length(); row++) {
            int diagonal = above[0];
            above[0] = row;
            for (int column = 1; column < above.length; column++) {
                int replaced = diagonal + (from.charAt(row - 1) == other.charAt(column - 1) ? 0 : 1);
                diagonal = above[column];
                above[column] = Math.min(replaced, 1 + Math.min(above[column], above[column - 1]));
            }
        }
        return above[other.length()];
    }
}
