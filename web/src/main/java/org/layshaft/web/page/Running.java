package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.InputRunning;
import org.layshaft.web.drawing.View;

/**
 * What is told of how the box runs and is looked at, read from a {@link Sight}.
 *
 * @param rpm of the input
 * @param nm on the input
 */
record Running(Optional<Fraction> rpm, Optional<Fraction> nm, Dialect dialect, View.From from, View.Printing printing) {

    /** Throws {@link BadInputException} where something cannot be read. */
    static Running of(Sight sight) {
        InputRunning input = InputRunning.of(sight.rpm(), sight.nm());
        return new Running(
                input.rpm(),
                input.nm(),
                Dialect.of(sight.words()),
                from(sight.view().orElse("")),
                sight.ink().filter("black"::equals).isPresent() ? View.Printing.BLACK : View.Printing.COLOURS);
    }

    private static View.From from(String written) {
        return switch (written) {
            case "", "side" -> View.From.SIDE;
            case "end" -> View.From.END;
            default ->
                throw new BadInputException(
                        BadInputException.Kind.UNKNOWN,
                        "There is no view \"%s\". Write view=side, or view=end for that along the shafts."
                                .formatted(written));
        };
    }
}
