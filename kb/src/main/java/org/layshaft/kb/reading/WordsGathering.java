package org.layshaft.kb.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.reading.Word.Group;
import org.layshaft.kb.words.Phrase;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/** Puts the words of many files together: synonyms add up; the first name and the first meaning hold. */
public final class WordsGathering {
    private WordsGathering() {}

    public static Words gather(List<Word> words, List<Phrase> phrases) {
        return new Words(
                group(words, Group.TERMS),
                group(words, Group.NOTICES),
                group(words, Group.CONDITIONS),
                group(words, Group.TOLD),
                phrases);
    }

    private static Map<String, Term> group(List<Word> words, Group group) {
        Map<String, Term> terms = new LinkedHashMap<>();
        words.stream()
                .filter(word -> word.group() == group)
                .forEach(word -> terms.merge(word.key(), word.term(), WordsGathering::together));
        return terms;
    }

    private static Term together(Term first, Term second) {
        List<String> also = Stream.concat(first.also().stream(), second.also().stream())
                .distinct()
                .toList();
        String means = first.means().isEmpty() ? second.means() : first.means();
        return new Term(
                first.name(),
                also,
                means,
                first.says(),
                first.may(),
                first.sort().or(second::sort),
                first.seenAt().compareTo(second.seenAt()) > 0 ? first.seenAt() : second.seenAt());
    }
}
