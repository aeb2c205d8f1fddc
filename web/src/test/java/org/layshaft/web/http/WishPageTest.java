package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of wishes. */
class WishPageTest {
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
    void nowWishedAndOfferedStandBesideEachOther() {
        String page =
                served.get("/wish?box=curlew-early&wish=nearer&gear=3&other=2").body();

        assertTrue(
                page.contains("<th scope=\"row\">now</th><td>34/37</td><td>2.5</td><td>22</td><td>96 mm</td>"), page);
        assertTrue(page.contains("between 1.800 and 3.007"), page);
        assertTrue(page.contains("<th scope=\"row\">offered 1</th>"), page);
        assertTrue(page.contains("href=\"/fit?set=SM-1158\""), page);
        assertTrue(page.contains("href=\"/swap?box=curlew-early&amp;set=SM-1158&amp;place="), page);
    }

    @Test
    void withoutAWishThereIsOnlyTheForm() {
        String page = served.get("/wish").body();

        assertTrue(page.contains("Look for teeth and sets"), page);
        assertFalse(page.contains("The same as JSON"), page);
    }

    @Test
    void axlesAndDrivenGearsLeadToTheirSets() {
        String axles = served.get("/wish?box=curlew&wish=axle&value=2500&at=90").body();
        assertTrue(axles.contains("href=\"/fit?set=SM-4052\""), axles);
        assertTrue(axles.contains("href=\"/swap?box=curlew&amp;axle=3.545&amp;cruise=90\""), axles);
        String driven =
                served.get("/wish?box=curlew-early&wish=reading&axle=3.9").body();
        assertTrue(driven.contains("href=\"/fit?set=SM-1085\""), driven);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            400 | /wish?box=curlew&wish=ratio&gear=3&value=low | value="low"
            404 | /wish?box=curlw&wish=nearer&gear=3&other=2   | No box is called
            400 | /wish?box=curlew&wish=axle&value=2500        | value="2500"
            """)
    void whatCannotBeUsedIsSaidAboveTheForm(int status, String path, String kept) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode());
        assertTrue(reply.body().contains("role=\"alert\""), reply::body);
        assertTrue(reply.body().contains(kept), reply::body);
    }
}
