package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is sent from elsewhere, at too great a length or in another type does not get in; each guard by itself. */
class OtherSitesTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            200 | localhost:PORT              | -                        | -
            200 | LOCALHOST:PORT              | -                        | -
            200 | 127.0.0.1:PORT              | http://127.0.0.1:PORT    | same-origin
            200 | [::1]:PORT                  | -                        | none
            200 | localhost:PORT              | null                     | same-origin
            200 | localhost:PORT              | http://localhost:PORT    | -
            421 | elsewhere.example:PORT      | http://elsewhere.example:PORT | same-origin
            421 | localhost.elsewhere.example:PORT | -                   | -
            421 | elsewhere.example           | -                        | -
            403 | localhost:PORT              | http://elsewhere.example | -
            403 | localhost:PORT              | http://localhost:1       | -
            403 | localhost:PORT              | https://localhost:PORT   | -
            403 | localhost:PORT              | null                     | -
            403 | localhost:PORT              | -                        | cross-site
            403 | localhost:PORT              | -                        | same-site
            403 | localhost:PORT              | http://localhost:PORT    | cross-site
            403 | localhost:PORT              | null                     | cross-site
            """)
    void onlyOurOwnPagesMayHaveABrowserSend(int status, String host, String origin, String site) throws IOException {
        String port = "" + served.at("/").getPort();
        String head = "Host: " + host + "\r\n"
                + (origin == null ? "" : "Origin: " + origin + "\r\n")
                + (site == null ? "" : "Sec-Fetch-Site: " + site + "\r\n");
        assertEquals(
                "HTTP/1.1 " + status,
                statusLine("POST /board HTTP/1.1\r\n" + head.replace("PORT", port)
                        + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 9\r\nConnection: close\r\n\r\n"
                        + "text=%7B\n"));
        assertEquals(
                status == 200 ? "HTTP/1.1 403" : "HTTP/1.1 " + status,
                statusLine("PUT /api/layouts/mine HTTP/1.1\r\n" + head.replace("PORT", port)
                        + "Content-Type: application/json\r\nContent-Length: 2\r\nConnection: close\r\n\r\n{}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            POST | /board           | text/plain
            POST | /board           | multipart/form-data; boundary=x
            POST | /board           | application/json
            POST | /api/board/look  | application/x-www-form-urlencoded
            POST | /api/board/look  | text/plain;charset=utf-8
            PUT  | /api/layouts/x   | text/json
            """)
    void onlyTheTypeThatIsReadIsTaken(String method, String path, String type) {
        HttpResponse<String> reply = served.send(HttpRequest.newBuilder(served.at(path))
                .header("Content-Type", type)
                .method(method, BodyPublishers.ofString("{}")));
        assertEquals(415, reply.statusCode(), reply::body);
        assertTrue(reply.headers().firstValue("Accept").isPresent());
    }

    @Test
    void withoutATypeNothingIsTaken() {
        assertEquals(
                415,
                served.send(HttpRequest.newBuilder(served.at("/board")).POST(BodyPublishers.ofString("text=x")))
                        .statusCode());
    }

    @Test
    void aCharsetBesideTheTypeIsNoMatter() {
        HttpResponse<String> reply = served.send(HttpRequest.newBuilder(served.at("/api/board/look"))
                .header("Content-Type", "application/json; charset=UTF-8")
                .POST(BodyPublishers.ofString("{\"text\": \"{}\"}")));
        assertEquals(200, reply.statusCode(), reply::body);
    }

    @Test
    void whatIsTooLongIsNotRead() throws IOException {
        String long413 = "x".repeat(BoardEndpoints.MOST_JSON_BYTES + 1);
        assertEquals(413, served.sendJson("POST", "/api/board/look", long413).statusCode());
        String unannounced = "POST /api/board/look HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n"
                + Integer.toHexString(long413.length()) + "\r\n" + long413 + "\r\n0\r\n\r\n";
        assertEquals("HTTP/1.1 413", statusLine(unannounced));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            DELETE | /board              | GET, HEAD, POST
            PUT    | /board              | GET, HEAD, POST
            POST   | /api/layouts/curlew | GET, HEAD, PUT
            POST   | /api/layouts        | GET, HEAD
            GET    | /api/board/look     | POST
            """)
    void otherMethodsAreToldWhichThereAre(String method, String path, String allowed) {
        HttpResponse<String> reply =
                served.send(HttpRequest.newBuilder(served.at(path)).method(method, BodyPublishers.noBody()));
        assertEquals(405, reply.statusCode(), reply::body);
        assertEquals(allowed, reply.headers().firstValue("Allow").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "[]", "{}", "{\"text\": 3}", "null"})
    void whatIsNoTextToLookAtIsRefused(String json) {
        HttpResponse<String> reply = served.sendJson("POST", "/api/board/look", json);
        assertEquals(400, reply.statusCode(), reply::body);
        assertTrue(reply.body().contains("Send an object like this"), reply::body);
    }

    private static String statusLine(String request) throws IOException {
        try (Socket socket = new Socket("localhost", served.at("/").getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1);
        }
    }
}
