package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Intent;

/** Every way to put a question that the packs know, and how well a question fits each. Thread-safe. */
final class Phrases {
    /** The name under which packs list words that change nothing: {@code please}. */
    private static final String ASIDE = "aside";

    private static final double ASIDE_WEIGHT = 0.1;
    private static final double UNKNOWN_WEIGHT = 2.4;

    private final Map<Intent, List<Pattern>> patterns = new EnumMap<>(Intent.class);
    private final Set<List<String>> asides;
    private final Map<String, Double> weights;
    private final Set<String> words = new HashSet<>();

    Phrases(List<Phrase> phrases) {
        asides = phrases.stream()
                .filter(phrase -> phrase.intent().equals(ASIDE))
                .flatMap(phrase -> phrase.patterns().stream())
                .map(Tokens::normal)
                .collect(Collectors.toSet());
        for (Phrase phrase : phrases) {
            Intent.of(phrase.intent())
                    .filter(intent -> intent != Intent.SUSPECTS && !intent.isOfParts() && !intent.isAtLarge())
                    .ifPresent(intent -> patterns.computeIfAbsent(intent, none -> new ArrayList<>())
                            .addAll(phrase.patterns().stream()
                                    .map(Pattern::of)
                                    .filter(pattern -> !pattern.elements().isEmpty())
                                    .toList()));
        }
        List<Set<String>> byIntent = patterns.values().stream()
                .map(ways -> ways.stream()
                        .flatMap(pattern -> pattern.words().stream())
                        .collect(Collectors.toSet()))
                .toList();
        byIntent.forEach(words::addAll);
        weights = words.stream().collect(Collectors.toMap(word -> word, word -> weigh(word, byIntent)));
    }

    /** Runs of words that change nothing. */
    Set<List<String>> asides() {
        return asides;
    }

    /** Every word of a pattern. */
    Set<String> words() {
        return words;
    }

    /** Whether a word is one of questions, or one that changes nothing. */
    boolean knows(String word) {
        return weights.containsKey(word) || asides.contains(List.of(word));
    }

    /** How much it tells that this word is there. */
    double weight(String word) {
        if (asides.contains(List.of(word))) {
            return ASIDE_WEIGHT;
        }
        return weights.getOrDefault(word, UNKNOWN_WEIGHT);
    }

    /** The best fit of each intent, best first. */
    List<Fit> fits(Rest rest) {
        List<Fit> best = new ArrayList<>();
        patterns.forEach((intent, ways) -> ways.stream()
                .map(pattern -> new Fitting(this, rest).fit(intent, pattern))
                .max(Comparator.comparingDouble(Fit::score))
                .ifPresent(best::add));
        best.sort(Comparator.comparingDouble(Fit::score).reversed());
        return best;
    }

    /** A word that only one intent has tells most; one that all have tells little. */
    private static double weigh(String word, List<Set<String>> byIntent) {
        long having = byIntent.stream().filter(each -> each.contains(word)).count();
        return 0.3 + Math.log((double) byIntent.size() / having);
    }
}
