package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of suspects: it needs nothing but links and forms. */
class DiagnosisPageTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void whatAFormAddsComesToStandInTheAddress() {
        assertEquals(
                "/suspects?layout=curlew&seen=overrun+3%3A+growls&seen=4%3A+not+noise",
                location("/suspects?layout=curlew&seen=overrun+3:+growls&words=quiet+in+4th"));
        assertEquals(
                "/suspects?layout=curlew&seen=cold+pulling+2%2C+3%3A+not+jumps-out&seen=after-work",
                location(
                        "/suspects?layout=curlew&notice=jumps-out&noticed=no&when=pulling&gear=2&gear=3&heat=cold&work=yes"));
    }

    @Test
    void whatIsNotUnderstoodIsToldAndKept() {
        String page = served.get("/suspects?layout=curlew&seen=overrun+3:+growls&words=grumps+in+4th")
                .body();

        assertTrue(page.contains("role=\"alert\""), page);
        assertTrue(page.contains("value=\"grumps in 4th\""), page);
        assertTrue(page.contains("On the overrun in 3rd: it growls"), page);
    }

    @Test
    void savedAndTakenUpAgain() {
        String query = "layout=curlew&seen=overrun+3%3A+growls&seen=after-work";
        HttpResponse<String> file = served.get("/suspects/diagnosis.json?" + query);

        assertTrue(
                file.headers().firstValue("Content-Disposition").orElseThrow().startsWith("attachment"));
        assertEquals("/suspects?" + query, location("/suspects?saved=" + Served.encoded(file.body())));
        String broken = served.get("/suspects?saved=" + Served.encoded("{\"layout\": 3}"))
                .body();
        assertTrue(broken.contains("no saved diagnosis"), broken);
    }

    @Test
    void eachSuspectLeadsToAllItWouldShowAndBack() {
        String suspects =
                served.get("/suspects?layout=curlew&seen=overrun+3%3A+whines").body();
        String link = suspects.split("<a href=\"/\\?layout=curlew&amp;fault=")[1].split("\"")[0].replace("&amp;", "&");
        String forward = served.get("/?layout=curlew&fault=" + link).body();

        assertTrue(forward.contains("Back to the diagnosis that led here"), forward);
        assertTrue(forward.contains("/suspects?layout=curlew&amp;seen=overrun+3%3A+whines"), forward);
        assertTrue(forward.contains("id=\"table\""), forward);
    }

    @Test
    void whatWouldBeLeftIsSaidOnlyWhereSomethingIsSuspected() {
        String nothing = served.get("/suspects?layout=curlew").body();
        String growls =
                served.get("/suspects?layout=curlew&seen=overrun+3:+growls").body();

        assertTrue(nothing.contains("What to try first"), nothing);
        assertFalse(nothing.contains("<span class=\"aside\">leaves"), nothing);
        assertTrue(growls.contains("What to try next"), growls);
        assertTrue(growls.contains("<span class=\"aside\">leaves"), growls);
    }

    @Test
    void nothingToldIsNoVerdict() {
        String page = served.get("/suspects").body();

        assertTrue(page.contains("Nothing yet."), page);
        assertFalse(page.contains("Cannot be told from this"), page);
        assertTrue(served.get("/suspects?layout=curlew&seen=overrun+3:+growls&seen=overrun+3:+not+growls")
                .body()
                .contains("Cannot be told from this"));
    }

    private static String location(String path) {
        HttpResponse<String> reply = served.get(path);
        assertEquals(303, reply.statusCode(), reply::body);
        return reply.headers().firstValue("Location").orElseThrow();
    }
}
