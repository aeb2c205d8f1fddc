package org.layshaft.web.board;

import java.util.ArrayList;
import java.util.List;

/** What lines two texts have in common and what only one of them has. */
public final class LineDiff {
    /** Beyond this many pairs of lines those that differ are shown as all taken out and all put in. */
    private static final int MOST_PAIRS = 4_000_000;

    private LineDiff() {}

    /** Which text has a line. */
    public enum In {
        BOTH,
        FIRST,
        SECOND
    }

    /**
     * A line.
     *
     * @param number in its text, from 1; in the second where it is in both
     */
    public record Line(In in, int number, String text) {}

    /** The longest common run of lines stays, the others are told, those of the first before those of the second. */
    public static List<Line> between(String first, String second) {
        List<String> one = first.lines().toList();
        List<String> other = second.lines().toList();
        int before = 0;
        while (before < Math.min(one.size(), other.size()) && one.get(before).equals(other.get(before))) {
            before++;
        }
        int after = 0;
        while (after < Math.min(one.size(), other.size()) - before
                && one.get(one.size() - 1 - after).equals(other.get(other.size() - 1 - after))) {
            after++;
        }
        List<Line> lines = new ArrayList<>();
        for (int line = 0; line < before; line++) {
            lines.add(new Line(In.BOTH, line + 1, other.get(line)));
        }
        middle(one.subList(before, one.size() - after), other.subList(before, other.size() - after), before, lines);
        for (int line = other.size() - after; line < other.size(); line++) {
            lines.add(new Line(In.BOTH, line + 1, other.get(line)));
        }
        return lines;
    }

    private static void middle(List<String> one, List<String> other, int offset, List<Line> lines) {
        boolean compared = (long) one.size() * other.size() <= MOST_PAIRS;
        int[][] common = compared ? common(one, other) : new int[0][0];
        int down = 0;
        int across = 0;
        while (down < one.size() || across < other.size()) {
            if (compared
                    && down < one.size()
                    && across < other.size()
                    && one.get(down).equals(other.get(across))) {
                lines.add(new Line(In.BOTH, offset + across + 1, other.get(across)));
                down++;
                across++;
            } else if (down < one.size()
                    && (across == other.size() || !compared || common[down + 1][across] >= common[down][across + 1])) {
                lines.add(new Line(In.FIRST, offset + down + 1, one.get(down)));
                down++;
            } else {
                lines.add(new Line(In.SECOND, offset + across + 1, other.get(across)));
                across++;
            }
        }
    }

    /** How many lines the rests of both have in common, from each pair of lines on. */
    private static int[][] common(List<String> one, List<String> other) {
        int[][] common = new int[one.size() + 1][other.size() + 1];
        for (int down = one.size() - 1; down >= 0; down--) {
            for (int across = other.size() - 1; across >= 0; across--) {
                common[down][across] = one.get(down).equals(other.get(across))
                        ? common[down + 1][across + 1] + 1
                        : Math.max(common[down + 1][across], common[down][across + 1]);
            }
        }
        return common;
    }
}
