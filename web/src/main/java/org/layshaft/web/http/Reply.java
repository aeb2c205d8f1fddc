package org.layshaft.web.http;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.layshaft.web.json.ProblemJson;
import org.layshaft.web.page.Answered;

/**
 * What is sent back.
 *
 * @param headers besides the content type and the headers that every reply has
 */
record Reply(int status, String contentType, byte[] body, Map<String, String> headers) {
    static final String HTML = "text/html;charset=utf-8";
    static final String SVG = "image/svg+xml;charset=utf-8";
    static final String CSV = "text/csv;charset=utf-8";
    static final String TEXT = "text/plain;charset=utf-8";
    static final String JSON = "application/json";
    static final String SCHEMA = "application/schema+json";
    static final String PROBLEM = "application/problem+json";

    static Reply of(int status, String contentType, String text) {
        return new Reply(status, contentType, text.getBytes(StandardCharsets.UTF_8), Map.of());
    }

    /** A page, with the status that its problem has where it has one. */
    static Reply of(Answered page) {
        return of(
                page.problem().map(problem -> ProblemJson.of(problem).status()).orElse(200), HTML, page.html());
    }

    /** That what was asked for stands at another address. */
    static Reply movedTo(String address) {
        return new Reply(303, HTML, new byte[0], Map.of("Location", address));
    }

    Reply with(String header, String value) {
        Map<String, String> more = new TreeMap<>(headers);
        more.put(header, value);
        return new Reply(status, contentType, body, more);
    }

    String text() {
        return new String(body, StandardCharsets.UTF_8);
    }

    /** The same with another body. */
    Reply saying(String text) {
        return new Reply(status, contentType, text.getBytes(StandardCharsets.UTF_8), headers);
    }

    /** That what the caller has is still so. */
    Reply unchanged() {
        return new Reply(304, contentType, new byte[0], headers);
    }
}
