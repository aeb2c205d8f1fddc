package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.web.desk.BadInputException;

/**
 * A page that was asked for.
 *
 * @param problem why it has no answer; empty where it has one
 * @param html in either case
 */
public record Answered(Optional<BadInputException> problem, String html) {
    static Answered with(String html) {
        return new Answered(Optional.empty(), html);
    }
}
