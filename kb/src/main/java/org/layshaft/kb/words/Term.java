package org.layshaft.kb.words;

import java.util.List;

/**
 * A word of the trade.
 *
 * @param name the word we use
 * @param also the others, British and American
 * @param means what it is, in a sentence
 */
public record Term(String name, List<String> also, String means) {
    public Term {
        also = List.copyOf(also);
    }
}
