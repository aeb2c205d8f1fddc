package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Words, singly and together, with what they may stand for. Longer matches come before shorter ones. */
final class Lexicon {
    private final Map<List<String>, Set<Meaning>> meanings = new LinkedHashMap<>();
    private int longest = 1;

    /** Two words that count only where a hyphen or stroke joins them: a bare {@code 3-4}. */
    static String joined(List<String> words) {
        return String.join("~", words);
    }

    Lexicon add(List<String> words, Meaning meaning) {
        if (!words.isEmpty()) {
            meanings.computeIfAbsent(List.copyOf(words), none -> new LinkedHashSet<>())
                    .add(meaning);
            longest = Math.max(longest, words.size());
        }
        return this;
    }

    boolean has(List<String> words) {
        return meanings.containsKey(words);
    }

    /** Every single word that occurs. */
    Set<String> words() {
        return meanings.keySet().stream()
                .flatMap(List::stream)
                .flatMap(word -> List.of(word.split("~")).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What is mentioned, in order, no two overlapping. */
    List<Mention> mentions(List<Token> tokens) {
        List<Mention> found = new ArrayList<>();
        for (int from = 0; from < tokens.size(); from++) {
            for (int to = from + 1; to <= Math.min(tokens.size(), from + longest); to++) {
                Set<Meaning> meant = meant(tokens.subList(from, to));
                if (!meant.isEmpty()) {
                    found.add(new Mention(from, to, typed(tokens.subList(from, to)), meant));
                }
            }
        }
        found.sort(Comparator.<Mention>comparingInt(mention -> mention.from() - mention.to())
                .thenComparing(Mention::from));
        List<Mention> kept = new ArrayList<>();
        boolean[] taken = new boolean[tokens.size()];
        for (Mention mention : found) {
            boolean free = true;
            for (int at = mention.from(); at < mention.to(); at++) {
                free &= !taken[at];
            }
            if (free) {
                kept.add(mention);
                Arrays.fill(taken, mention.from(), mention.to(), true);
            }
        }
        kept.sort(Comparator.comparing(Mention::from));
        return kept;
    }

    private Set<Meaning> meant(List<Token> span) {
        Set<Meaning> meant =
                meanings.getOrDefault(span.stream().map(Token::text).toList(), Set.of());
        if (meant.isEmpty() && span.size() > 1 && span.stream().skip(1).allMatch(Token::joined)) {
            String together = joined(span.stream().map(Token::text).toList());
            return meanings.getOrDefault(List.of(together), Set.of());
        }
        return Collections.unmodifiableSet(meant);
    }

    static String typed(List<Token> span) {
        StringBuilder typed = new StringBuilder();
        for (Token token : span) {
            typed.append(typed.length() == 0 ? "" : token.joined() ? "-" : " ").append(token.typed());
        }
        return typed.toString();
    }
}
