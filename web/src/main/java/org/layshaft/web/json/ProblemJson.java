package org.layshaft.web.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.layshaft.web.desk.BadInputException;

/**
 * A refusal, in the form of RFC 9457.
 *
 * @param type address of the page that explains this kind of refusal
 * @param title what kind of refusal it is
 * @param status as in HTTP
 * @param detail what is wrong, the value, and what to do
 * @param instance the address that was asked for; left out where nothing was asked over HTTP
 * @param understood always null: the question was not
 * @param suggestions what would be answered, nearest first
 */
public record ProblemJson(
        String type,
        String title,
        int status,
        String detail,
        @JsonInclude(JsonInclude.Include.NON_NULL) String instance,
        String understood,
        List<String> suggestions) {

    /** Where the pages stand that explain the kinds. */
    public static final String TYPES = "/problems/";

    public static ProblemJson of(ProblemKind kind, String detail, List<String> suggestions) {
        return new ProblemJson(
                TYPES + kind.word(), kind.title(), kind.status(), detail, null, null, List.copyOf(suggestions));
    }

    public static ProblemJson of(BadInputException problem) {
        return of(ProblemKind.of(problem.kind()), problem.getMessage(), problem.suggestions());
    }

    /** The same, of this address. */
    public ProblemJson at(String address) {
        return new ProblemJson(type, title, status, detail, address, understood, suggestions);
    }

    /** The same with this status, which the connection has settled. */
    public ProblemJson withStatus(int settled) {
        return new ProblemJson(type, title, settled, detail, instance, understood, suggestions);
    }
}
