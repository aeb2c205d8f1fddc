package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;

/** Reads what was written one thing after another, and refuses all that cannot be used at once. */
final class WrittenNumbers {
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]{1,7}(\\.[0-9]{1,6})?");
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,7}");

    private final List<BadInputException> problems = new ArrayList<>();

    /** A number of more than 0, if it was written and is one. */
    Optional<Fraction> positive(String name, Optional<String> written, String like) {
        Optional<Fraction> number = number(name, written, like);
        if (number.isPresent() && number.get().signum() <= 0) {
            add(new BadInputException(
                    UNFIT,
                    "The %s is %s. Give one of more than 0."
                            .formatted(name, written.get().strip())));
            return Optional.empty();
        }
        return number;
    }

    /** A number, if it was written and can be read. */
    Optional<Fraction> number(String name, Optional<String> written, String like) {
        return matching(name, written, PLAIN, like).map(text -> Fraction.of(new BigDecimal(text)));
    }

    Optional<Integer> whole(String name, Optional<String> written, String like) {
        return matching(name, written, WHOLE, like).map(Integer::valueOf);
    }

    /** The serial number of a box, if it was written and is one. */
    Optional<Integer> serial(Optional<String> written) {
        Optional<Integer> serial = whole("serial number", written, "1250");
        if (serial.isPresent() && serial.get() < 0) {
            add(new BadInputException(
                    UNFIT,
                    "The serial number is %s. Serial numbers are counted from 0: leave out the sign."
                            .formatted(written.get().strip())));
            return Optional.empty();
        }
        return serial;
    }

    /** What comes of this, unless it is refused. */
    <T> Optional<T> unlessRefused(Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (BadInputException refused) {
            add(refused);
        } catch (ImpossibleFactsException impossible) {
            impossible.problems().forEach(problem -> add(new BadInputException(UNFIT, problem)));
        }
        return Optional.empty();
    }

    void add(BadInputException problem) {
        problems.add(problem);
    }

    /** Throws {@link BadInputException} with every problem there has been, a line for each. */
    void refuse() {
        if (problems.isEmpty()) {
            return;
        }
        throw new BadInputException(
                problems.get(0).kind(),
                String.join(
                        "\n",
                        problems.stream().map(BadInputException::getMessage).toList()),
                problems.stream()
                        .flatMap(problem -> problem.suggestions().stream())
                        .toList());
    }

    private Optional<String> matching(String name, Optional<String> written, Pattern form, String like) {
        Optional<String> text = written.map(String::strip);
        if (text.isPresent() && !form.matcher(text.get()).matches()) {
            add(new BadInputException(
                    MALFORMED,
                    "The %s \"%s\" cannot be read. Write it like this: %s".formatted(name, text.get(), like)));
            return Optional.empty();
        }
        return text;
    }
}
