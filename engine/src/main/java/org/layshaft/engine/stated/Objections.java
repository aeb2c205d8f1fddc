package org.layshaft.engine.stated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/** Gathers what cannot be so about the facts of one record, to refuse them all at once. */
public final class Objections {
    private final List<String> problems = new ArrayList<>();

    public Objections unless(boolean holds, String problem, Object... values) {
        if (!holds) {
            problems.add(problem.formatted(values));
        }
        return this;
    }

    /** A stated number must be more than zero. */
    public Objections unlessPositive(Optional<Fraction> number, String fact) {
        number.ifPresent(given ->
                unless(given.signum() > 0, "%s is %s. It must be more than 0.", capital(fact), Shown.decimal(given)));
        return this;
    }

    /** What has been objected to, in sentences. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    /** Throws {@link ImpossibleFactsException} where anything has been objected to. */
    public void refuse() {
        if (!problems.isEmpty()) {
            throw new ImpossibleFactsException(problems);
        }
    }

    private static String capital(String fact) {
        return Character.toUpperCase(fact.charAt(0)) + fact.substring(1);
    }
}
