package org.layshaft.web.http;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.layshaft.web.Demo;
import org.layshaft.web.board.Library;

/** A server on a free port, and a client that speaks to it. */
public final class Served implements AutoCloseable {
    private final PageServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    public Served() {
        this(Library.fixed(Demo.desk()));
    }

    public Served(Library library) {
        this.server = PageServer.start(0, library);
    }

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

    /** Sends a form, each name followed by its value. */
    HttpResponse<String> post(String path, String... fields) {
        StringBuilder form = new StringBuilder();
        for (int field = 0; field < fields.length; field += 2) {
            form.append(form.isEmpty() ? "" : "&")
                    .append(encoded(fields[field]))
                    .append('=')
                    .append(encoded(fields[field + 1]));
        }
        return send(HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form.toString())));
    }

    HttpResponse<String> sendJson(String method, String path, String json, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/json")
                .method(method, BodyPublishers.ofString(json));
        return send(headers.length > 0 ? request.headers(headers) : request);
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
