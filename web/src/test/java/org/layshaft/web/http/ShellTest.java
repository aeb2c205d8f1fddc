package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The doors of every page, and what is kept through them. */
class ShellTest {
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
    @CsvSource({
        "/, What works",
        "/suspects, What may be wrong",
        "/sound, What sounds",
        "/road, On the road",
        "/fit, Does it fit",
        "/fit/check/normal-module, Does it fit",
        "/cross, Sets against boxes",
        "/swap, What a change does",
        "/identify, Which gear is this"
    })
    void thePageThatOneIsAtIsMarked(String path, String door) {
        String page = served.get(path).body();

        Matcher current = Pattern.compile("aria-current=\"page\">([^<]+)<").matcher(page);
        assertTrue(current.find(), page);
        assertEquals(door, current.group(1));
        assertFalse(current.find(), "one door only");
    }

    @Test
    void theStateGoesAlong() {
        String page = served.get("/?layout=curlew&gear=3&fault=3-4-fork+bent&q=which+gears+work")
                .body();

        assertTrue(page.contains("href=\"/sound?layout=curlew&amp;gear=3&amp;fault=3-4-fork+bent\""), page);
        assertTrue(page.contains("href=\"/road?layout=curlew&amp;gear=3&amp;fault=3-4-fork+bent\""), page);
        assertTrue(page.contains("href=\"/fit?layout=curlew&amp;box=curlew&amp;gear=3"), page);
    }

    @Test
    void aBuildOfABoxLeadsToItsLayout() {
        String page = served.get("/fit?box=curlew-early&units=us").body();

        assertTrue(page.contains("href=\"/?layout=curlew&amp;units=us\""), page);
        assertTrue(page.contains("href=\"/swap?layout=curlew&amp;box=curlew-early&amp;units=us\""), page);
    }

    /** Heron stands in no catalogue; the parts pages are had without it, and it is not forgotten there. */
    @Test
    void aLayoutWithoutPartsIsCarriedThroughThePagesOfParts() {
        String fit = served.get("/fit?layout=heron").body();

        assertTrue(fit.contains("href=\"/suspects?layout=heron\""), fit);
        assertFalse(fit.contains("box=heron"), fit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?layout=dunlin", "/nothing", "/?q=%FF", "/fit?box=nothing", "/sound?layout=%3Cb%3E"})
    void whatIsRefusedHasItsDoorsToo(String path) {
        String page = served.get(path).body();

        assertTrue(page.contains("<nav class=\"doors"), page);
        assertFalse(page.contains("<!--doors-->"), page);
        assertFalse(page.contains("layout=dunlin") || page.contains("<b>"), page);
    }

    @Test
    void nothingOfAnybodysStandsUnescaped() {
        String page =
                served.get("/?layout=curlew&gear=1&fault=%22%3E%3Cscript%3E").body();

        assertFalse(page.contains("<script>"), page);
    }
}
