package org.layshaft.web.desk;

import java.util.List;
import org.layshaft.web.asking.Answer;

/**
 * An answer to a question put in words.
 *
 * @param others other readings of the question, in words that may be asked again
 */
public record Asked(Answer answer, List<String> others) {
    public Asked {
        others = List.copyOf(others);
    }
}
