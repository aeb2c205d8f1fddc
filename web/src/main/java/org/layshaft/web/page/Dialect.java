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

    /** The name of a part in these words. */
    String say(String name) {
        return switch (this) {
            case AS_TYPED -> name;
            case BRITISH -> TradeWord.british(name);
            case AMERICAN -> TradeWord.american(name);
        };
    }

    /** What it is called on either side of the ocean, where that is not alike. */
    static List<String> both(String name) {
        String british = TradeWord.british(name);
        String american = TradeWord.american(name);
        return british.equals(american) ? List.of() : List.of("British: " + british, "American: " + american);
    }
}
