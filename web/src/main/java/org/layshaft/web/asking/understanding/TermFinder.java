package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.layshaft.kb.words.Term;

/** Finds the terms of the trade that have a meaning in the packs, by any of their names. Thread-safe. */
final class TermFinder {
    private final Map<List<String>, String> byForm = new HashMap<>();
    private final int longest;

    TermFinder(Map<String, Term> terms) {
        terms.forEach((key, term) -> byForm.putIfAbsent(Tokens.normal(term.name()), key));
        terms.forEach(
                (key, term) -> term.also().stream().map(Tokens::normal).forEach(form -> byForm.putIfAbsent(form, key)));
        byForm.remove(List.of());
        longest = byForm.keySet().stream().mapToInt(List::size).max().orElse(0);
    }

    /** In the order of the words, the longest first among those that overlap. */
    List<OpenFitting.Term> in(List<Token> tokens) {
        List<String> words = tokens.stream().map(Token::text).toList();
        List<OpenFitting.Term> all = new ArrayList<>();
        for (int from = 0; from < words.size(); from++) {
            for (int to = from + 1; to <= Math.min(words.size(), from + longest); to++) {
                String name = byForm.get(words.subList(from, to));
                if (name != null) {
                    all.add(new OpenFitting.Term(name, from, to));
                }
            }
        }
        all.sort(Comparator.comparingInt((OpenFitting.Term term) -> term.from() - term.to()));
        List<OpenFitting.Term> kept = new ArrayList<>();
        for (OpenFitting.Term term : all) {
            if (kept.stream().noneMatch(other -> other.from() < term.to() && term.from() < other.to())) {
                kept.add(term);
            }
        }
        kept.sort(Comparator.comparingInt(OpenFitting.Term::from));
        return kept;
    }

    /** Every single word that occurs. */
    Set<String> words() {
        Set<String> words = new TreeSet<>();
        byForm.keySet().stream().flatMap(List::stream).flatMap(Stream::of).forEach(words::add);
        return words;
    }
}
