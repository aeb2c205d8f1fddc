package org.layshaft.web.json;

import org.layshaft.web.desk.BadInputException;

/** Refusals of what was given, with the HTTP status that each kind has. */
public final class Problems {
    private Problems() {}

    public static ProblemJson of(BadInputException problem) {
        return ProblemJson.of(
                problem.kind().title(), statusOf(problem.kind()), problem.getMessage(), problem.suggestions());
    }

    private static int statusOf(BadInputException.Kind kind) {
        return switch (kind) {
            case MISSING, MALFORMED -> 400;
            case UNKNOWN -> 404;
            case UNFIT, NOT_UNDERSTOOD -> 422;
        };
    }
}
