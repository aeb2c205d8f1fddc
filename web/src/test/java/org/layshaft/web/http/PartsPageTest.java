package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.FitChecks;

/** The pages of the parts counter: they need nothing but links and forms. */
class PartsPageTest {
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
    void oneSetInOneBoxIsToldWithEveryCheck() {
        String page =
                served.get("/fit?set=SM-1152&box=curlew-early&place=third").body();

        assertTrue(page.contains("It fits with companions: SM-1171"), page);
        assertTrue(page.contains("the third gear SM-1223: 39"), page);
        assertTrue(page.contains("misses by 3"), page);
        assertTrue(page.contains("<a href=\"/fit/check/clutching-count\">"), page);
        assertTrue(page.contains("<option value=\"third\" selected>"), page);
        assertTrue(page.contains("What is supplied today"), page);
        assertTrue(page.contains("Support the vehicle on stands"), page);
    }

    @Test
    void factsAreToldWithTheirBasis() {
        String page =
                served.get("/fit?set=SM-1152&box=curlew-early&place=third").body();

        assertTrue(page.contains("<td>stated</td>"), page);
        assertTrue(page.contains("<th scope=\"row\">number of clutching teeth</th><td class=\"ratio\">39</td>"), page);
    }

    @Test
    void wordsFindSetsAndAnUnknownNumberTheNearest() {
        String found = served.get("/fit?set=close+ratio").body();
        assertTrue(found.contains("/fit?set=SM-1154"), found);
        assertFalse(found.contains("SM-1150"), found);

        HttpResponse<String> unknown = served.get("/fit?set=SM-11522&box=curlew");
        assertEquals(404, unknown.statusCode());
        assertTrue(unknown.body().contains("role=\"alert\""), unknown::body);
        assertTrue(unknown.body().contains("href=\"/fit?set=SM-1152\""), unknown::body);
        assertTrue(unknown.body().contains("value=\"SM-11522\""), unknown::body);
    }

    @Test
    void nothingAskedListsEverySetOfTheCatalogue() {
        String page = served.get("/fit").body();

        assertTrue(page.contains("SM-1150, Curlew third pair, 37/34"), page);
        assertTrue(page.contains("<optgroup label=\"Curlew\">"), page);
    }

    @Test
    void whatSomebodyTypesIsEscaped() {
        String page = served.get("/fit?set=" + Served.encoded("<b>\"x\"</b>")).body();

        assertTrue(page.contains("value=\"&lt;b&gt;&quot;x&quot;&lt;/b&gt;\""), page);
        assertFalse(page.contains("<b>"), page);
    }

    @Test
    void everyCheckIsExplained() {
        for (FitCheck check : FitChecks.found().all()) {
            String page = served.get("/fit/check/" + check.id()).body();
            assertTrue(page.contains("<h1>"), () -> check.id() + "\n" + page);
            assertTrue(page.contains("<strong>Looks at</strong>"), () -> check.id() + "\n" + page);
        }
        assertEquals(404, served.get("/fit/check/no-such").statusCode());
    }

    @Test
    void theTableSaysInWordsWhatItsMarksSay() {
        String page = served.get("/cross?box=curlew&shape=pair").body();

        assertTrue(page.contains("fits<span class=\"unseen\">: SM-1150 in Curlew, first generation"), page);
        assertTrue(page.contains("href=\"/fit?set=SM-1150&amp;box=curlew-early\""), page);
        assertFalse(page.contains("in Plover, "), page);
    }

    @Test
    void anUnknownFilterIsSaidAboveTheForm() {
        HttpResponse<String> reply = served.get("/cross?verdict=perhaps");

        assertEquals(404, reply.statusCode());
        assertTrue(reply.body().contains("There is no verdict"), reply::body);
        assertTrue(reply.body().contains("<form action=\"/cross\""), reply::body);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/suspects", "/sound", "/fit", "/cross", "/fit/check/normal-module"})
    void everyPageLeadsToTheOthers(String path) {
        String page = served.get(path).body();

        for (String door : new String[] {"/", "/suspects", "/sound", "/fit", "/cross"}) {
            assertTrue(page.contains("<li><a href=\"%s\"".formatted(door)), () -> path + " does not lead to " + door);
        }
    }
}
