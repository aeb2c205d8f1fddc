package org.layshaft.kb.words;

import java.util.List;

/**
 * A word of the trade.
 *
 * @param name the word we use
 * @param also the others, British and American
 * @param means what it is, in a sentence
 * @param says for what is noticed, a clause that claims it: {@code it jumps out of gear}; empty for other words
 * @param may the same where it only may be so: {@code it may jump out of gear}; empty for other words
 */
public record Term(String name, List<String> also, String means, String says, String may) {
    public Term {
        also = List.copyOf(also);
    }
}
