package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Intent;

/**
 * The turns of speech by which people tell what they notice, each as a run of words.
 *
 * @param leadIns how one asks what it may be: {@code what could make it}
 * @param quiet that no noise is heard
 * @param notNoticed that something is not so
 * @param breaks that another thing begins: {@code but}
 * @param asides what changes nothing
 */
record SymptomPhrases(
        Set<List<String>> leadIns,
        Set<List<String>> quiet,
        Set<List<String>> notNoticed,
        Set<List<String>> breaks,
        Set<List<String>> asides) {

    static SymptomPhrases of(List<Phrase> phrases) {
        return new SymptomPhrases(
                runs(phrases, Intent.SUSPECTS.word()),
                runs(phrases, "quiet"),
                runs(phrases, "not-noticed"),
                runs(phrases, "break"),
                runs(phrases, "aside"));
    }

    private static Set<List<String>> runs(List<Phrase> phrases, String intent) {
        return phrases.stream()
                .filter(phrase -> phrase.intent().equals(intent))
                .flatMap(phrase -> phrase.patterns().stream())
                .map(Tokens::normal)
                .collect(Collectors.toSet());
    }
}
