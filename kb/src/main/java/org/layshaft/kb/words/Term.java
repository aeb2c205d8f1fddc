package org.layshaft.kb.words;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Depth;

/**
 * A word of the trade.
 *
 * @param name the word we use
 * @param also the others, British and American
 * @param means what it is, in a sentence
 * @param says for what is noticed, a clause that claims it: {@code it jumps out of gear}; empty for other words
 * @param may the same where it only may be so: {@code it may jump out of gear}; empty for other words
 * @param sort for what is noticed, what it is a sort of: {@code noise}; empty where it is of none
 * @param seenAt how far one must dismantle to notice it
 */
public record Term(
        String name, List<String> also, String means, String says, String may, Optional<String> sort, Depth seenAt) {
    public Term {
        also = List.copyOf(also);
    }
}
