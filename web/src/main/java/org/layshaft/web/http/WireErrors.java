package org.layshaft.web.http;

import java.util.List;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.ProblemJson;
import org.layshaft.web.json.ProblemKind;

/** Answers requests that do not reach the routes, because they are too large or not HTTP as it should be. */
final class WireErrors implements Request.Handler {
    private final ErrorReplies errors;

    WireErrors(ErrorReplies errors) {
        this.errors = errors;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus();
        String path = path(request);
        ProblemJson problem = ProblemJson.of(kind(status), sentence(status), List.of())
                .withStatus(status)
                .at(path);
        Sending.send(errors.of(problem, Face.of(path)), request, response, callback);
        return true;
    }

    /** The address may be what is wrong, and is then not there. */
    private static String path(Request request) {
        String path = request.getHttpURI() == null ? null : request.getHttpURI().getPath();
        return path == null ? "/" : path;
    }

    private static ProblemKind kind(int status) {
        return switch (status) {
            case 413 -> ProblemKind.TOO_LARGE;
            case 414, 431 -> ProblemKind.TOO_LONG;
            case 500 -> ProblemKind.OUR_FAULT;
            default -> ProblemKind.NOT_HTTP;
        };
    }

    private static String sentence(int status) {
        return switch (status) {
            case 413 -> "The request carries more than is read here. Ask with GET, and without a body.";
            case 414, 431 -> "The address or its headers are longer than is read here. Ask a shorter question.";
            case 500 -> "Something went wrong on our side.";
            default -> "The request is not HTTP as it should be. Look at its address.";
        };
    }
}
