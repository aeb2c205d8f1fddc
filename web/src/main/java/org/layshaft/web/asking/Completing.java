package org.layshaft.web.asking;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** From what was typed so far to whole questions that begin so. */
final class Completing {
    private static final int MOST = 8;
    private static final int LEAST_LETTERS = 2;

    private Completing() {}

    /** Those first that go on from what was typed, then those that have all its words or their beginnings. */
    static List<String> of(String begun, Collection<String> questions) {
        String start = begun.strip().toLowerCase(Locale.ROOT);
        if (start.length() < LEAST_LETTERS) {
            return List.of();
        }
        List<String> words = words(start);
        Map<String, Integer> ranked = new LinkedHashMap<>();
        for (String question : questions) {
            String lower = question.toLowerCase(Locale.ROOT);
            List<String> others = words(lower);
            boolean all = words.stream().allMatch(word -> others.stream().anyMatch(other -> other.startsWith(word)));
            if (lower.startsWith(start)) {
                ranked.put(question, 0);
            } else if (all && !words.isEmpty()) {
                ranked.put(question, 1);
            }
        }
        return ranked.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .limit(MOST)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split("[^\\p{L}\\p{N}-]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
