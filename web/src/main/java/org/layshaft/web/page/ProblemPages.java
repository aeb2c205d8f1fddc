package org.layshaft.web.page;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.stream.Stream;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.json.ProblemKind;

/** The pages that explain each kind of refusal; a refusal names its page. Thread-safe. */
final class ProblemPages {
    private final Templates templates;

    ProblemPages(Templates templates) {
        this.templates = templates;
    }

    /** Throws {@link BadInputException} where there is no such kind. */
    String page(String word) {
        ProblemKind kind = ProblemKind.named(word)
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no kind of refusal \"%s\".".formatted(word),
                        Stream.of(ProblemKind.values()).map(ProblemKind::word).toList()));
        return templates.fill("problem", kind);
    }
}
