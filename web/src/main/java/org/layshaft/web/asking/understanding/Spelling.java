package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.web.asking.Ordinals;

/**
 * Mends a mistyped word to the known word that it must have been: one edit in words of five letters or more, two in
 * nine or more, neighbours swapped counting as one. Where two known words are as near, that of the two is taken which
 * questions are made of, and otherwise neither.
 */
final class Spelling {
    private final Set<String> known;
    private final Set<String> wholeWords;
    private final Set<String> ofQuestions;

    /** @param ofQuestions those that questions are made of */
    Spelling(Set<String> normalForms, Set<String> ofQuestions) {
        this.ofQuestions = Set.copyOf(ofQuestions);
        known = new LinkedHashSet<>(normalForms);
        wholeWords = new LinkedHashSet<>(normalForms);
        wholeWords.removeIf(word -> word.length() < 4 || !word.chars().allMatch(Character::isLetter));
        wholeWords.addAll(Ordinals.words());
        wholeWords.add("reverse");
    }

    boolean knows(String normal) {
        return known.contains(normal) || Ordinals.isGear(normal);
    }

    /** The normal form of the one nearest known word, or the word itself. */
    String mend(String word) {
        return knows(word) ? word : nearest(word).map(Tokens::normalWord).orElse(word);
    }

    private Optional<String> nearest(String word) {
        if (word.length() < 4 || word.chars().anyMatch(Character::isDigit)) {
            return Optional.empty();
        }
        int least = Integer.MAX_VALUE;
        List<String> best = new ArrayList<>();
        for (String candidate : wholeWords) {
            int longer = Math.max(word.length(), candidate.length());
            int allowed = longer < 5 ? 0 : longer < 9 ? 1 : 2;
            if (Math.abs(word.length() - candidate.length()) > allowed) {
                continue;
            }
            int edits = edits(word, candidate);
            if (edits <= allowed && edits <= least) {
                if (edits < least) {
                    best.clear();
                }
                least = edits;
                best.add(candidate);
            }
        }
        List<String> likeliest = best.size() == 1
                ? best
                : best.stream()
                        .filter(each ->
                                ofQuestions.contains(each) || Ordinals.words().contains(each))
                        .toList();
        return likeliest.size() == 1 ? Optional.of(likeliest.get(0)) : Optional.empty();
    }

    /** Letters put in, left out, changed, or swapped with their neighbour, to get from one word to the other. */
    static int edits(String one, String other) {
        int[][] edits = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                    continue;
                }
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                edits[i][j] = Math.min(edits[i - 1][j - 1] + change, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
                boolean swapped = i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1);
                if (swapped) {
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
                }
            }
        }
        return edits[one.length()][other.length()];
    }
}
