package org.layshaft.web.http;

import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.layshaft.web.http.Route.Face;

/** Answers requests that do not reach the routes, because they are too large or not HTTP as it should be. */
final class WireErrors implements Request.Handler {
    private final ErrorReplies errors;

    WireErrors(ErrorReplies errors) {
        this.errors = errors;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus();
        Reply reply = errors.of(status, HttpStatus.getMessage(status), sentence(status), face(request));
        Sending.send(reply, request, response, callback);
        return true;
    }

    /** The address may be what is wrong, and is then not there. */
    private static Face face(Request request) {
        String path = request.getHttpURI() == null ? null : request.getHttpURI().getPath();
        return path == null ? Face.PAGE : Face.of(path);
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
