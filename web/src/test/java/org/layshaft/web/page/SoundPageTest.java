package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.SoundRequest;

/** What stands in the page of what a box sounds. */
class SoundPageTest {
    private static final Pages PAGES = new Pages(Demo.desk());

    @Test
    void whatFitsStandsInATableWithHowItIsComputed() {
        String page = page(Map.of("layout", "curlew", "gear", "3", "rpm", "2400", "hz", "756"));

        assertTrue(page.contains("<h2>Curlew in 3rd, 2400 turns a minute at the input</h2>"), page);
        assertTrue(page.contains("What fits 756 Hz, within 15.12 Hz"), page);
        assertTrue(page.contains("34 teeth × 444/799 turns of third gear, or 37 teeth × 24/47 turns"), page);
        assertTrue(page.contains("<td class=\"ratio\">755.74</td>"), page);
        assertTrue(page.contains("href=\"/api/sound?layout=curlew&amp;gear=3&amp;rpm=2400&amp;hz=756\""), page);
    }

    @Test
    void theFormKeepsWhatWasSent() {
        String page = page(Map.of("layout", "plover", "gear", "N", "rpm", "850", "within", "3 Hz"));

        assertTrue(page.contains("<option value=\"N\" selected>neutral</option>"), page);
        assertTrue(page.contains("name=\"rpm\" type=\"text\" inputmode=\"decimal\" value=\"850\""), page);
        assertTrue(page.contains("value=\"3 Hz\""), page);
    }

    @Test
    void everyLineOfTheListHasItsBarInTheFigure() {
        String page = page(Map.of("layout", "heron", "gear", "1 low slow"));

        int lines = count(page, "<td class=\"rank\">[0-9]+</td><th scope=\"row\">");
        assertTrue(lines > 30, page);
        assertEquals(lines, count(page, "<g class=\"(loaded|idle)\">"));
        assertFalse(page.contains("class=\"heard\""));
    }

    @Test
    void leftOpenTheFirstLayoutAndGearAreShown() {
        String page = page(Map.of());
        String first =
                Demo.desk().knowledge().layouts().values().iterator().next().name();

        assertTrue(page.contains("<h2>%s in ".formatted(first)), page);
        assertFalse(page.contains("What fits"), page);
    }

    @Test
    void whatIsNoNumberAndNoGearIsRefused() {
        String evil = "<script>\"&'";
        assertThrows(BadInputException.class, () -> page(Map.of("layout", "curlew", "gear", "3", "rpm", evil)));
        assertThrows(BadInputException.class, () -> page(Map.of("layout", "curlew", "gear", evil)));
    }

    @Test
    void whatDoesNotFitIsSaid() {
        String page = page(Map.of("layout", "curlew", "gear", "3", "rpm", "2400", "hz", "9000"));

        assertTrue(page.contains("Nothing that can be told fits."), page);
    }

    private static String page(Map<String, String> sent) {
        return PAGES.sound(new SoundRequest(
                Optional.ofNullable(sent.get("layout")),
                Optional.ofNullable(sent.get("gear")),
                Optional.ofNullable(sent.get("rpm")),
                Optional.ofNullable(sent.get("kmh")),
                Optional.ofNullable(sent.get("mph")),
                Optional.ofNullable(sent.get("hz")),
                Optional.ofNullable(sent.get("within")),
                Optional.empty(),
                Optional.empty()));
    }

    private static int count(String page, String pattern) {
        return (int) Pattern.compile(pattern).matcher(page).results().count();
    }
}
