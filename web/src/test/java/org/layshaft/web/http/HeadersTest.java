package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadersTest {
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
    @ValueSource(strings = {"/", "/api/layouts", "/assets/layshaft.js", "/drawing/curlew.svg", "/nothing", "/?q=%FF"})
    void everyReplyIsFenced(String path) {
        HttpResponse<String> reply = served.get(path);

        String policy = reply.headers().firstValue("Content-Security-Policy").orElseThrow();
        assertTrue(policy.startsWith("default-src 'self';"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        assertEquals(
                "nosniff", reply.headers().firstValue("X-Content-Type-Options").orElseThrow());
        assertEquals(
                "no-referrer", reply.headers().firstValue("Referrer-Policy").orElseThrow());
        assertTrue(reply.headers().firstValue("Server").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "/assets/layshaft.css,text/css;charset=utf-8",
        "/assets/layshaft.js,text/javascript;charset=utf-8",
        "/assets/drawing.css,text/css;charset=utf-8",
        "/assets/marks.svg,image/svg+xml;charset=utf-8",
        "/assets/icon.svg,image/svg+xml;charset=utf-8",
        "/drawing/curlew.svg,image/svg+xml;charset=utf-8",
        "/,text/html;charset=utf-8"
    })
    void typesSayTheirCharacters(String path, String type) {
        assertEquals(type, served.get(path).headers().firstValue("Content-Type").orElseThrow());
    }

    @Test
    void aFileThatIsStillTheSameIsNotSentAgain() {
        HttpResponse<String> first = served.get("/assets/layshaft.css");
        String tag = first.headers().firstValue("ETag").orElseThrow();

        HttpResponse<String> again = served.get("/assets/layshaft.css", "If-None-Match", tag);
        assertEquals(304, again.statusCode());
        assertEquals("", again.body());
        assertEquals(
                200,
                served.get("/assets/layshaft.css", "If-None-Match", "\"other\"").statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/api/layouts", "/assets/layshaft.css"})
    void aHeadHasTheLengthAndNoBody(String path) {
        HttpResponse<String> head =
                served.send(HttpRequest.newBuilder(served.at(path)).method("HEAD", BodyPublishers.noBody()));

        assertEquals(200, head.statusCode());
        assertEquals("", head.body());
        assertEquals(
                served.get(path).headers().firstValueAsLong("Content-Length").orElseThrow(),
                head.headers().firstValueAsLong("Content-Length").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/assets/../pages/page.mustache", "/assets/%2e%2e/pages/page.mustache", "/assets/..%2fx"})
    void nothingOutsideTheAssetsIsHad(String path) {
        int status = served.get(path).statusCode();
        assertTrue(status == 400 || status == 404, () -> path + " " + status);
    }
}
