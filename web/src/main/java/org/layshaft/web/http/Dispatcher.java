package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.ProblemKind;
import org.layshaft.web.page.Shell;

/** Hands each request to its route and sends the reply. */
final class Dispatcher extends Handler.Abstract {
    private final List<Route> routes;
    private final ErrorReplies errors;
    private final Shell shell;

    Dispatcher(List<Route> routes, ErrorReplies errors, Shell shell) {
        this.routes = routes;
        this.errors = errors;
        this.shell = shell;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Reply reply = reply(request);
        String known = request.getHeaders().get(HttpHeader.IF_NONE_MATCH);
        boolean unchanged = known != null && known.equals(reply.headers().get("ETag"));
        Sending.send(unchanged ? reply.unchanged() : reply, request, response, callback);
        return true;
    }

    private Reply reply(Request request) {
        String path = Request.getPathInContext(request);
        String address = request.getHttpURI().getPathQuery();
        Face face = Face.of(path);
        String method = request.getMethod();
        if (!HttpMethod.GET.is(method) && !HttpMethod.HEAD.is(method)) {
            return errors.of(
                            ProblemKind.METHOD,
                            method + " is not answered here. Everything is had with GET.",
                            address,
                            face)
                    .with("Allow", "GET, HEAD");
        }
        Map<String, List<String>> query = Map.of();
        try {
            Call call = Call.of(request, path);
            query = call.query();
            return around(answer(call), call.path(), query);
        } catch (BadInputException e) {
            return around(errors.of(e, address, face), path, query);
        } catch (RuntimeException e) {
            return around(errors.ofOurFault(e, address, face), path, query);
        }
    }

    /** A page goes out with the doors to the others in it. */
    private Reply around(Reply reply, String path, Map<String, List<String>> query) {
        return reply.contentType().equals(Reply.HTML) && reply.body().length > 0
                ? reply.saying(shell.around(reply.text(), path, query))
                : reply;
    }

    private Reply answer(Call call) {
        for (Route route : routes) {
            Optional<String> rest = route.match(call.path());
            if (rest.isPresent()) {
                return route.endpoint().answer(call.at(rest.get()));
            }
        }
        throw new BadInputException(
                UNKNOWN,
                "There is nothing at \"%s\". The page is at \"/\", what the API answers in /api/openapi.json."
                        .formatted(call.path()));
    }
}
