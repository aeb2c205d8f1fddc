package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.words.Term;

/** The many words of the trade for one thing, put in for each other within a name. */
final class Synonyms {
    /** Names of a part are worked out this far and no farther. */
    private static final int MOST_NAMES = 200;

    private final List<List<List<String>>> terms;
    private final Map<String, List<List<List<String>>>> byFirstWord = new HashMap<>();

    Synonyms(Collection<Term> terms) {
        this.terms = terms.stream().map(Synonyms::forms).toList();
        this.terms.forEach(forms -> forms.stream()
                .map(form -> form.get(0))
                .distinct()
                .forEach(word -> byFirstWord
                        .computeIfAbsent(word, none -> new ArrayList<>())
                        .add(forms)));
    }

    /** Every form of the term of this name; the name alone where no pack has the term. */
    List<List<String>> formsOf(String name) {
        List<String> normal = Tokens.normal(name);
        return terms.stream()
                .filter(forms -> forms.get(0).equals(normal))
                .findFirst()
                .orElse(List.of(normal));
    }

    /** A name, and every name that comes of it by other words for what it is made of. */
    Set<List<String>> of(List<String> name) {
        List<List<String>> begun = List.of(List.of());
        int at = 0;
        while (at < name.size()) {
            List<List<String>> pieces = List.of(name.subList(at, at + 1));
            int length = 1;
            for (List<List<String>> forms : byFirstWord.getOrDefault(name.get(at), List.of())) {
                int longest = longestAt(name, at, forms);
                if (longest > length || longest == length && pieces.size() == 1) {
                    pieces = forms;
                    length = longest;
                }
            }
            begun = joined(begun, pieces);
            at += length;
        }
        return new LinkedHashSet<>(begun);
    }

    private static int longestAt(List<String> name, int at, List<List<String>> forms) {
        return forms.stream()
                .filter(form -> at + form.size() <= name.size()
                        && name.subList(at, at + form.size()).equals(form))
                .mapToInt(List::size)
                .max()
                .orElse(0);
    }

    private static List<List<String>> joined(List<List<String>> begun, List<List<String>> pieces) {
        return begun.stream()
                .flatMap(start -> pieces.stream()
                        .map(piece ->
                                Stream.concat(start.stream(), piece.stream()).toList()))
                .limit(MOST_NAMES)
                .toList();
    }

    private static List<List<String>> forms(Term term) {
        return Stream.concat(Stream.of(term.name()), term.also().stream())
                .map(Tokens::normal)
                .filter(form -> !form.isEmpty())
                .distinct()
                .toList();
    }
}
