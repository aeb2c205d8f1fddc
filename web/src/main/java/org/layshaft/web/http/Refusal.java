package org.layshaft.web.http;

import java.util.Map;
import org.layshaft.web.json.ProblemKind;

/**
 * That a request is not taken on, before anybody looks at what it asks.
 *
 * @param detail what is wrong, and what to do
 * @param headers that the reply is to have besides
 */
record Refusal(ProblemKind kind, String detail, Map<String, String> headers) {
    static Refusal of(ProblemKind kind, String detail) {
        return new Refusal(kind, detail, Map.of());
    }

    Refusal with(String header, String value) {
        return new Refusal(kind, detail, Map.of(header, value));
    }
}
