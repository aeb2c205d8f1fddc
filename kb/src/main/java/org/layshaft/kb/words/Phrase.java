package org.layshaft.kb.words;

import java.util.List;

/**
 * One shape of question.
 *
 * @param intent what is asked: {@code gears-left}
 * @param patterns ways to put it, in the notation of the words reference: {@code which gears (still) work}
 * @param examples whole questions that must be understood so
 */
public record Phrase(String intent, List<String> patterns, List<String> examples) {
    public Phrase {
        patterns = List.copyOf(patterns);
        examples = List.copyOf(examples);
    }
}
