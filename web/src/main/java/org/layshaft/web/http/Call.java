package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.Fields;
import org.layshaft.web.desk.BadInputException;

/**
 * What was asked for.
 *
 * @param path decoded, with its leading slash
 * @param rest what of the path stands where its route has a place for it; empty where it has none
 * @param query the decoded parameters, each with all its values
 */
record Call(String path, String rest, Map<String, List<String>> query) {

    /** Throws {@link BadInputException} where the parameters cannot be decoded. */
    static Call of(Request request, String path) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        for (Fields.Field field : fields(request)) {
            query.put(field.getName(), List.copyOf(field.getValues()));
        }
        return new Call(path, "", query);
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
        return new Call(path, newRest, query);
    }
}
