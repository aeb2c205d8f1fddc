package org.layshaft.web.http;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.layshaft.web.Demo;

/** A server on a free port, and a client that speaks to it. */
public final class Served implements AutoCloseable {
    private final PageServer server = PageServer.start(0, Demo.desk());
    private final HttpClient client = HttpClient.newHttpClient();

    public URI at(String pathAndQuery) {
        return server.address().resolve(pathAndQuery);
    }

    HttpResponse<String> get(String pathAndQuery, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(at(pathAndQuery));
        return send(headers.length > 0 ? request.headers(headers) : request);
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
