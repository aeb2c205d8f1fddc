package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.Fields;
import org.eclipse.jetty.util.UrlEncoded;
import org.layshaft.web.desk.BadInputException;

/**
 * What was asked for.
 *
 * @param path decoded, with its leading slash
 * @param rest what of the path stands where its route has a place for it; empty where it has none
 * @param query the decoded parameters of the address and of a form that was sent, each with all its values
 * @param conditions what was said under If-Match and If-None-Match, by these names
 * @param body the text that was sent; empty where none was, or a form
 */
record Call(String path, String rest, Map<String, List<String>> query, Map<String, String> conditions, String body) {
    private static final List<HttpHeader> CONDITIONS = List.of(HttpHeader.IF_MATCH, HttpHeader.IF_NONE_MATCH);

    Call(String path, String rest, Map<String, List<String>> query) {
        this(path, rest, query, Map.of(), "");
    }

    /** Throws {@link BadInputException} where the parameters cannot be decoded. */
    static Call of(Request request, String path) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        for (Fields.Field field : fields(request)) {
            query.put(field.getName(), List.copyOf(field.getValues()));
        }
        Map<String, String> conditions = new LinkedHashMap<>();
        for (HttpHeader condition : CONDITIONS) {
            String said = request.getHeaders().get(condition);
            if (said != null) {
                conditions.put(condition.asString(), said.strip());
            }
        }
        return new Call(path, "", query, conditions, "");
    }

    /** The same with what was sent. Throws {@link BadInputException} where it cannot be decoded. */
    Call with(String sent, boolean isForm) {
        if (!isForm) {
            return new Call(path, rest, query, conditions, sent);
        }
        Map<String, List<String>> all = new LinkedHashMap<>(query);
        Fields form = new Fields();
        try {
            UrlEncoded.decodeUtf8To(sent, form);
        } catch (RuntimeException e) {
            throw new BadInputException(
                    MALFORMED, "The form that was sent cannot be decoded. Send it percent-encoded, in UTF-8.");
        }
        form.forEach(field -> all.put(field.getName(), List.copyOf(field.getValues())));
        return new Call(path, rest, all, conditions, "");
    }

    private static Fields fields(Request request) {
        try {
            return Request.extractQueryParameters(request, StandardCharsets.UTF_8);
        } catch (RuntimeException e) {
            throw new BadInputException(
                    MALFORMED,
                    "The parameters of the address cannot be decoded. Write them percent-encoded, in UTF-8.");
        }
    }

    /** Every value given that is not blank. */
    List<String> all(String name) {
        return query.getOrDefault(name, List.of()).stream()
                .filter(value -> !value.isBlank())
                .toList();
    }

    Optional<String> first(String name) {
        return all(name).stream().findFirst();
    }

    /** Throws {@link BadInputException} where it was not given. */
    String required(String name, String example) {
        return first(name)
                .orElseThrow(() -> new BadInputException(
                        MISSING, "The parameter \"%s\" is missing. Give it like this: %s".formatted(name, example)));
    }

    Call at(String newRest) {
        return new Call(path, newRest, query, conditions, body);
    }
}
