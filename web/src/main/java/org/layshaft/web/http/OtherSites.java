package org.layshaft.web.http;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.layshaft.web.json.ProblemKind;

/**
 * Keeps pages of other sites from writing here through the browser of whoever sits at this machine.
 *
 * <p>A page elsewhere can have a browser send a form here, and can have its own name lead to this machine. The first shows
 * in Sec-Fetch-Site and Origin, the second in Host. A program that is no browser sends neither of the first two.
 */
final class OtherSites {
    /** The server is bound to this machine alone, so nobody reaches it rightly by another name. */
    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

    private static final Set<String> OURS = Set.of("same-origin", "none");

    /** What a browser says where it keeps its origin to itself. */
    private static final String UNTOLD = "null";

    private OtherSites() {}

    static Optional<Refusal> refuse(Request request) {
        String host = header(request, HttpHeader.HOST.asString());
        if (!THIS_MACHINE.contains(host.replaceFirst(":[0-9]*$", ""))) {
            return Optional.of(Refusal.of(
                    ProblemKind.OTHER_HOST,
                    "What is sent here must be sent to localhost, and this was sent to \"%s\".".formatted(host)));
        }
        String site = header(request, "Sec-Fetch-Site");
        String origin = header(request, HttpHeader.ORIGIN.asString());
        boolean fromElsewhere = !site.isEmpty() && !OURS.contains(site);
        boolean ofElsewhere =
                origin.equals(UNTOLD) ? site.isEmpty() : !origin.isEmpty() && !origin.equals("http://" + host);
        return fromElsewhere || ofElsewhere
                ? Optional.of(Refusal.of(
                        ProblemKind.FROM_ELSEWHERE,
                        "A page of another site sent this, and only Layshaft's own pages may. Open Layshaft itself and"
                                + " send it from there."))
                : Optional.empty();
    }

    private static String header(Request request, String name) {
        String value = request.getHeaders().get(name);
        return value == null ? "" : value.strip().toLowerCase(Locale.ROOT);
    }
}
