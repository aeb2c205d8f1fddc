package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.web.cli.Layshaft;

/** Questions at large over HTTP and on the command line, and those that follow another. */
class AskingApiTest {
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
    @CsvSource(
            delimiter = '|',
            value = {
                "rpm at 100 km/h in fifth | on-the-road",
                "torque at the wheels in first with 200 Nm | torque-at",
                "compare Curlew with Avocet | compared",
                "320 Hz in third at 2000 rpm | sounding",
                "30 teeth at 1800 rpm, mesh frequency | mesh-frequency",
                "one wheel on ice, what happens | wheels-do",
                "what turns when it is towed in neutral | towed",
                "what is a baulk ring | meaning",
                "why does the idler reverse | explained",
                "which gear is it with the 3-4 sleeve to the rear | which-gear",
                "what does the third blocking ring do | what-for",
                "how many teeth has third gear | teeth-of",
                "why does no gear drive with the input shaft sheared | why-none",
            })
    void pageCommandLineAndJsonSayTheSame(String words, String kind) throws JsonProcessingException {
        String body =
                served.get("/api/ask?layout=curlew&q=" + Served.encoded(words)).body();
        JsonNode answer = new ObjectMapper().readTree(body);
        assertEquals(kind, answer.path("question").asText(), body);
        StringWriter out = new StringWriter();
        assertEquals(
                0,
                Layshaft.run(new PrintWriter(out), new PrintWriter(out), "ask", "--layout", "curlew", "--json", words));
        assertEquals(body, out.toString());
        String page = served.get("/?layout=curlew&q=" + Served.encoded(words)).body();
        String first = answer.at("/says/0").asText();
        assertTrue(page.contains(first.substring(0, Math.min(20, first.length()))), first);
    }

    @Test
    void aQuestionFollowsTheOneBefore() throws JsonProcessingException {
        JsonNode answer = json("/api/ask?layout=curlew&after=" + Served.encoded("ratio of third") + "&q="
                + Served.encoded("and in fourth?"));

        assertEquals("the ratio of 4th in Curlew", answer.get("understood").asText());
        String page = served.get("/?layout=curlew&after=" + Served.encoded("ratio of third") + "&q="
                        + Served.encoded("and in fourth?"))
                .body();
        assertTrue(page.contains("name=\"after\" value=\"the ratio of 4th in Curlew\""), "passed on");
    }

    @Test
    void whatIsBeyondReachIsDeclinedWithItsReason() throws JsonProcessingException {
        HttpResponse<String> reply = served.get("/api/ask?layout=curlew&q=" + Served.encoded("price of a third gear"));

        assertEquals(422, reply.statusCode());
        JsonNode problem = new ObjectMapper().readTree(reply.body());
        assertTrue(problem.get("detail").asText().startsWith("Prices are not held here."), reply.body());
        assertTrue(problem.get("suggestions").size() <= 5, reply.body());
    }

    @Test
    void questionsAreOfferedAsSomebodyTypes() throws JsonProcessingException {
        List<String> offered = completions("what tur");

        assertFalse(offered.isEmpty());
        assertEquals("what turns in neutral in Curlew", offered.get(0));
        assertEquals(List.of(), completions("w"));
        assertEquals(List.of(), completions("xyzzy"));
        assertTrue(completions("ratio 3rd").contains("the ratio of 3rd in Curlew"));
    }

    private static List<String> completions(String begun) throws JsonProcessingException {
        JsonNode all =
                json("/api/complete?layout=curlew&q=" + Served.encoded(begun)).get("completions");
        return StreamSupport.stream(all.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    private static JsonNode json(String path) throws JsonProcessingException {
        HttpResponse<String> reply = served.get(path);
        assertEquals(200, reply.statusCode(), reply::body);
        return new ObjectMapper().readTree(reply.body());
    }
}
