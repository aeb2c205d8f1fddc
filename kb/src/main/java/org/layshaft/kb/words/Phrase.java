package org.layshaft.kb.words;

import java.util.List;

/**
 * One shape of question.
 *
 * @param intent what is asked: {@code gears-left}
 * @param name which of several subjects with the same intent, {@code idler-reverses}; of a group of words, what patterns
 *     call it; empty where there is but one
 * @param patterns ways to put it, in the notation of the words reference: {@code which gears (still) work}
 * @param examples whole questions that must be understood so
 * @param says what is said of the subject, in sentences; empty where all is computed
 * @param shows what of a box is told besides: {@code idlers}
 */
public record Phrase(
        String intent,
        String name,
        List<String> patterns,
        List<String> examples,
        List<String> says,
        List<String> shows) {
    public Phrase {
        patterns = List.copyOf(patterns);
        examples = List.copyOf(examples);
        says = List.copyOf(says);
        shows = List.copyOf(shows);
    }
}
