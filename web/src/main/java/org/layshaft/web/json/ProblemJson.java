package org.layshaft.web.json;

import java.util.List;

/**
 * A refusal, in the form of RFC 9457.
 *
 * @param title what kind of refusal it is
 * @param status as in HTTP
 * @param detail what is wrong, the value, and what to do
 * @param understood always null: the question was not
 * @param suggestions what would be answered, nearest first
 */
public record ProblemJson(
        String type, String title, int status, String detail, String understood, List<String> suggestions) {

    public static ProblemJson of(String title, int status, String detail, List<String> suggestions) {
        return new ProblemJson("about:blank", title, status, detail, null, suggestions);
    }
}
