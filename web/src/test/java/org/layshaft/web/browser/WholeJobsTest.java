package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A whole job of each of the three people, from the first page on, without the browser complaining or the page jumping. */
class WholeJobsTest {
    private static final String WATCH = "window.jumps = 0; new PerformanceObserver(list => {"
            + " for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.jumps += entry.value;"
            + "}).observe({type: 'layout-shift', buffered: true});";

    /** The most that a page may jump: what is counted as good by the web's own measure of layout shift. */
    private static final double STEADY = 0.1;

    private Visit visit;

    @BeforeEach
    void open() {
        visit = new Visit(Chromium.start());
    }

    @AfterEach
    void close() {
        if (visit != null) {
            visit.close();
        }
    }

    @Test
    void fromWhatIsNoticedToASuspectAndWhatItWouldLeave() {
        begin("/?layout=curlew");
        write("q", "growls in neutral, not with the pedal down, quiet in 4th");
        follow("#answer a[href*='seen=']", "seen=");
        int before = visit.all(".suspect").size();
        assertTrue(before > 1, "Several suspects.");

        follow(".tests li li a", "seen=");
        assertTrue(visit.all(".noticed-so-far li").size() > 3, "What was tried is kept.");
        assertTrue(visit.all(".suspect").size() <= before, "It narrows.");

        follow(".suspect a[href^='/?']", "fault=");
        assertFalse(visit.all(".verdicts tbody tr").isEmpty());
        assertTrue(visit.all(".chip").size() == 1, "The suspect is supposed.");
        end();
    }

    @Test
    void fromASetToItsCompanionsAndWhatItChanges() {
        begin("/fit");
        write("set", "SM-1223");
        new Select(visit.the("#box")).selectByValue("curlew-early");
        visit.the("#set").submit();
        visit.untilAddressHas("box=curlew-early");
        visit.the(".companions li");
        assertTrue(visit.all(".checks tbody tr").size() > 5, "Every check is shown.");

        visit.go("/wish?box=curlew-early&wish=nearer&gear=3&other=2");
        follow("#answer a[href*='/swap?box']", "set=");
        assertTrue(
                visit.the("#answer").getText().contains("km/h"),
                visit.the("#answer").getText());
        end();
    }

    @Test
    void fromAllBoxesToADrawingForAHandout() {
        begin("/layouts");
        write("where", "two-shaft, five-speed");
        visit.untilAddressHas("where=");
        follow(".card h3 a", "layout=");
        visit.the("img[src^='/drawing/']");

        visit.go("/?layout=plover&gear=3");
        write("q", "trace the power in 3rd");
        assertTrue(visit.the(".reading").getText().contains("Understood as"));
        follow(".steps a[href*='gear=4']", "gear=4");
        WebElement handout = visit.the("a[download][href^='/drawing/plover.svg']");
        assertTrue(handout.getAttribute("href").contains("gear=4"), handout.getAttribute("href"));
        end();
    }

    private void begin(String address) {
        visit.driver().executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", WATCH));
        visit.go(address);
    }

    private void write(String id, String words) {
        WebElement field = visit.the("#" + id);
        field.clear();
        field.sendKeys(words);
        if (!id.equals("set")) {
            field.submit();
            visit.untilAddressHas(id + "=");
        }
    }

    private void follow(String link, String leadsTo) {
        WebElement found = visit.the(link);
        String href = found.getAttribute("href");
        visit.driver().executeScript("arguments[0].click()", found);
        visit.until(any -> visit.driver().getCurrentUrl().equals(href));
        assertTrue(href.contains(leadsTo), href);
        visit.until(any ->
                visit.driver().findElements(By.cssSelector("[aria-busy]")).isEmpty());
    }

    private void end() {
        Object jumps = visit.driver().executeScript("return window.jumps");
        assertTrue(((Number) jumps).doubleValue() < STEADY, "The page jumps by " + jumps);
        assertEquals(List.of(), visit.complaints());
    }
}
