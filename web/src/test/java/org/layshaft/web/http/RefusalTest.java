package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RefusalTest {
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
    @CsvSource(delimiter = '|', textBlock = """
            400 | /api/gears                                       | layout
            400 | /api/ask?layout=curlew                           | q
            404 | /api/gears?layout=curlw                          | curlw
            404 | /api/layouts/dunlin                              | dunlin
            404 | /api/gears?layout=curlew&fault=6-7-fork+bent     | 6-7
            404 | /api/gears?layout=curlew&fault=3-4-fork+purple   | purple
            404 | /api/gears?layout=curlew&fault=3-4-fork+bent+side%3Dup | up
            404 | /api/nothing                                     | /api/nothing
            404 | /api                                             | /api
            422 | /api/ask?layout=curlew&q=fish+and+chips          | fish
            422 | /api/gears?layout=curlew&fault=idler-spindle+cut | idler spindle
            400 | /api/gears?layout=%FF%FE                         | decoded
            """)
    void theApiSaysWhatIsWrong(int status, String path, String named) throws JsonProcessingException {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode(), reply::body);
        assertEquals(
                "application/problem+json",
                reply.headers().firstValue("Content-Type").orElseThrow());
        JsonNode problem = new ObjectMapper().readTree(reply.body());
        assertEquals(status, problem.get("status").asInt());
        assertTrue(problem.get("understood").isNull());
        assertTrue(problem.get("detail").asText().contains(named), problem.get("detail")::asText);
    }

    @Test
    void theNearestIsOffered() throws JsonProcessingException {
        JsonNode layout = new ObjectMapper()
                .readTree(served.get("/api/gears?layout=curlw").body());
        assertEquals("curlew", layout.at("/suggestions/0").asText());
        JsonNode question = new ObjectMapper()
                .readTree(served.get("/api/ask?layout=curlew&q=fish+and+chips").body());
        assertFalse(question.get("suggestions").isEmpty());
    }

    @Test
    void tooManyFaultsAndTooLongQuestionsAreRefused() {
        String tooLong = "a".repeat(501);
        assertEquals(400, served.get("/api/ask?layout=curlew&q=" + tooLong).statusCode());
        String tooMany = "/api/gears?layout=curlew" + "&fault=3-4-fork+bent".repeat(9);
        assertTrue(served.get(tooMany).body().contains("at most 8"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?layout=curlw", "/?layout=curlew&gear=9", "/?layout=curlew&part=nut", "/nothing"})
    void aPageSaysItInHtml(String path) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(404, reply.statusCode());
        assertEquals(
                "text/html;charset=utf-8",
                reply.headers().firstValue("Content-Type").orElseThrow());
        assertTrue(reply.body().contains("<a href=\"/\">Back to the page</a>"), reply::body);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/api/gears?layout=curlew", "/assets/layshaft.css"})
    void onlyReadingIsAnswered(String path) {
        HttpResponse<String> reply =
                served.send(HttpRequest.newBuilder(served.at(path)).POST(BodyPublishers.ofString("x")));

        assertEquals(405, reply.statusCode());
        assertEquals("GET, HEAD", reply.headers().firstValue("Allow").orElseThrow());
    }

    @Test
    void aLargeBodyIsRefused() {
        HttpResponse<String> reply =
                served.send(HttpRequest.newBuilder(served.at("/")).POST(BodyPublishers.ofString("x".repeat(9000))));

        assertEquals(413, reply.statusCode());
        assertTrue(reply.body().contains("Ask with GET"), reply::body);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /api/ask    | application/problem+json
            /           | text/html;charset=utf-8
            """)
    void whatDoesNotReachTheRoutesIsRefusedInTheKindThatWasAskedFor(String path, String kind) {
        HttpResponse<String> reply =
                served.send(HttpRequest.newBuilder(served.at(path)).POST(BodyPublishers.ofString("x".repeat(9000))));

        assertEquals(413, reply.statusCode());
        assertEquals(kind, reply.headers().firstValue("Content-Type").orElseThrow());
    }

    @Test
    void anAddressBeyondAllMeasureIsRefused() {
        HttpResponse<String> reply = served.get("/?q=" + "a".repeat(9000));

        assertTrue(reply.statusCode() == 414 || reply.statusCode() == 431, () -> "" + reply.statusCode());
        assertTrue(reply.body().contains("Ask a shorter question"), reply::body);
    }
}
