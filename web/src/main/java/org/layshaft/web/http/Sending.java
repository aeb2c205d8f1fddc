package org.layshaft.web.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Puts replies on the wire, with the headers that every reply has. */
final class Sending {
    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none';" + " form-action 'self'; frame-ancestors 'none'";

    /** Bytes; less than this fits a packet as it is. */
    private static final int WORTH_PACKING = 1400;

    private Sending() {}

    static void send(Reply reply, Request request, Response response, Callback callback) {
        response.setStatus(reply.status());
        HttpFields.Mutable headers = response.getHeaders();
        headers.put(HttpHeader.CACHE_CONTROL, "no-cache");
        headers.put("Content-Security-Policy", POLICY);
        headers.put("Referrer-Policy", "no-referrer");
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("Cross-Origin-Opener-Policy", "same-origin");
        headers.put("Cross-Origin-Resource-Policy", "same-origin");
        reply.headers().forEach(headers::put);
        if (reply.status() == 304) {
            response.write(true, null, callback);
            return;
        }
        headers.put(HttpHeader.CONTENT_TYPE, reply.contentType());
        headers.put(HttpHeader.VARY, "Accept-Encoding");
        byte[] body = reply.body();
        if (body.length > WORTH_PACKING && request.getHeaders().contains(HttpHeader.ACCEPT_ENCODING, "gzip")) {
            body = Packed.of(body);
            headers.put(HttpHeader.CONTENT_ENCODING, "gzip");
        }
        headers.put(HttpHeader.CONTENT_LENGTH, body.length);
        boolean bodyWanted = !HttpMethod.HEAD.is(request.getMethod());
        response.write(true, bodyWanted ? ByteBuffer.wrap(body) : null, callback);
    }
}
