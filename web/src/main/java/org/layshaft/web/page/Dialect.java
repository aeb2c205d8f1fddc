package org.layshaft.web.page;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.desk.BadInputException;

/** Whose words parts are called by. */
enum Dialect {
    AS_TYPED,
    BRITISH,
    AMERICAN;

    static Dialect of(Optional<String> written) {
        return switch (written.orElse("")) {
            case "" -> AS_TYPED;
            case "uk" -> BRITISH;
            case "us" -> AMERICAN;
            default ->
                throw new BadInputException(
                        UNKNOWN,
                        "Words of \"%s\" are not known. Write words=uk for British or words=us for American ones."
                                .formatted(written.get()),
                        List.of("uk", "us"));
        };
    }

    String say(String name) {
        return name;
    }
}
