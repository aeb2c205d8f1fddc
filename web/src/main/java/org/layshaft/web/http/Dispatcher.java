package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.http.Route.Answering;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.ProblemKind;
import org.layshaft.web.page.Shell;

/** Hands each request to its route and sends the reply. */
final class Dispatcher extends Handler.Abstract {
    private final Supplier<RoutesNow.Made> now;
    private final ErrorReplies errors;

    /** @param now asked anew at every request, since what is known may have grown */
    Dispatcher(Supplier<RoutesNow.Made> now, ErrorReplies errors) {
        this.now = now;
        this.errors = errors;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Reply reply = reply(request);
        String known = request.getHeaders().get(HttpHeader.IF_NONE_MATCH);
        boolean unchanged = reply.status() == 200
                && Bodies.isReading(request.getMethod())
                && known != null
                && known.equals(reply.headers().get("ETag"));
        Sending.send(unchanged ? reply.unchanged() : reply, request, response, callback);
        return true;
    }

    private Reply reply(Request request) {
        String path = Request.getPathInContext(request);
        String address = request.getHttpURI().getPathQuery();
        Face face = Face.of(path);
        RoutesNow.Made made = now.get();
        Map<String, List<String>> query = Map.of();
        try {
            Call call = Call.of(request, path);
            query = call.query();
            return around(answer(made.routes(), request, call), path, query, made.shell());
        } catch (BadInputException e) {
            return around(errors.of(e, address, face), path, query, made.shell());
        } catch (RuntimeException e) {
            return around(errors.ofOurFault(e, address, face), path, query, made.shell());
        }
    }

    /** A page goes out with the doors to the others in it. */
    private static Reply around(Reply reply, String path, Map<String, List<String>> query, Shell shell) {
        return reply.contentType().equals(Reply.HTML) && reply.body().length > 0
                ? reply.saying(shell.around(reply.text(), path, query))
                : reply;
    }

    private Reply answer(List<Route> routes, Request request, Call call) {
        for (Route route : routes) {
            Optional<String> rest = route.match(call.path());
            if (rest.isPresent()) {
                return answer(route, request, call.at(rest.get()));
            }
        }
        throw new BadInputException(
                UNKNOWN,
                "There is nothing at \"%s\". The page is at \"/\", what the API answers in /api/openapi.json."
                        .formatted(call.path()));
    }

    private Reply answer(Route route, Request request, Call call) {
        String method = request.getMethod();
        Optional<Answering> answering = route.answering(method);
        Optional<Refusal> refusal = Bodies.refuseLength(request, answering)
                .or(() -> answering.isPresent() ? Optional.empty() : Optional.of(notAnswered(method, route)))
                .or(() -> Bodies.isReading(method) ? Optional.empty() : OtherSites.refuse(request))
                .or(() -> Bodies.refuseType(request, answering.orElseThrow()));
        if (refusal.isPresent()) {
            return said(refusal.get(), request);
        }
        Answering by = answering.orElseThrow();
        if (by.type().isEmpty()) {
            return by.endpoint().answer(call);
        }
        try {
            return by.endpoint()
                    .answer(call.with(Bodies.read(request, by), by.type().get().equals(Route.FORM)));
        } catch (Bodies.TooLongException tooLong) {
            return said(tooLong.refusal(), request);
        }
    }

    private static Refusal notAnswered(String method, Route route) {
        return Refusal.of(ProblemKind.METHOD, "%s is not answered here, but %s is.".formatted(method, route.allowed()))
                .with("Allow", route.allowed());
    }

    private Reply said(Refusal refusal, Request request) {
        Reply reply = errors.of(
                refusal.kind(),
                refusal.detail(),
                request.getHttpURI().getPathQuery(),
                Face.of(Request.getPathInContext(request)));
        for (Map.Entry<String, String> header : refusal.headers().entrySet()) {
            reply = reply.with(header.getKey(), header.getValue());
        }
        return reply;
    }
}
