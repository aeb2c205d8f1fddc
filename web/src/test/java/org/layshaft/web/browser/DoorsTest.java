package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** From page to page: nothing is loaded anew, nothing is lost, and back leads back. */
class DoorsTest {
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
    void aPageFollowsAnotherWithoutLoadingAnew() {
        visit.go("/?layout=curlew&gear=3");
        visit.driver().executeScript("window.stays = true");

        through("On the road", "/road?layout=curlew&gear=3");
        assertEquals("Curlew on the road – Layshaft", visit.driver().getTitle());
        assertEquals("On the road", visit.the(".doors [aria-current]").getText());
        assertTrue((boolean) visit.driver()
                .executeScript("return getComputedStyle(document.querySelector('.view .wide')).overflowX === 'auto'"));
        visit.the("#at").sendKeys("60", Keys.ENTER);
        visit.untilAddressHas("at=60");

        through("Layouts", "/layouts?layout=curlew");
        visit.the("#where").sendKeys("two-shaft five-speed", Keys.ENTER);
        visit.untilAddressHas("where=two-shaft");
        visit.driver().findElement(By.linkText("Plover")).click();
        visit.untilAddressHas("/box?layout=plover");

        through("What may be wrong", "/suspects?layout=plover");
        assertTrue((boolean) visit.driver().executeScript("return window.stays"));
        assertEquals(List.of(), visit.complaints());
    }

    @Test
    void backAndForthThroughPages() {
        visit.go("/box?layout=curlew");
        through("On the road", "/road?layout=curlew");
        through("Side by side", "/compare?layout=curlew");
        visit.driver().navigate().back();
        visit.until(any -> visit.driver().getTitle().startsWith("Curlew on the road"));
        visit.driver().navigate().back();
        visit.until(any -> visit.driver().getTitle().startsWith("Curlew at a glance"));
        visit.driver().navigate().forward();
        visit.until(any -> visit.driver().getTitle().startsWith("Curlew on the road"));
        assertEquals(List.of(), visit.complaints());
    }

    /** The tools of the drawing are those of a page that was come to from another. */
    @Test
    void whatAPageNeedsComesAlong() {
        visit.go("/box?layout=curlew");
        through("What works", "/?layout=curlew");
        visit.until(any -> visit.driver()
                .executeScript(
                        "return performance.getEntriesByType('resource').some(each => each.name.endsWith('/drawing.js'))")
                .equals(true));
        visit.the(".steps a[href*='gear=2']").click();
        visit.untilAddressHas("gear=2");
        String before = visit.the(".canvas svg").getCssValue("width");
        visit.until(any -> {
            visit.the("[data-tool=nearer]").click();
            return !visit.the(".canvas svg").getCssValue("width").equals(before);
        });
        assertEquals(List.of(), visit.complaints());
    }

    @Test
    void filesAreLeftToTheBrowser() {
        visit.go("/road?layout=curlew");
        visit.driver().findElement(By.linkText("The same as JSON")).click();
        visit.untilAddressHas("/api/road");
        assertTrue(visit.driver().getPageSource().contains("speedsIn"));
    }

    @Test
    void lightOrDarkAsChosen() {
        visit.scheme("light");
        visit.go("/box?layout=curlew");
        String light = paper();
        visit.the("#look").sendKeys("dark");
        visit.until(any -> !paper().equals(light));
        String dark = paper();

        through("On the road", "/road?layout=curlew");
        assertEquals(dark, paper());
        visit.go("/suspects?layout=curlew");
        assertEquals(dark, paper(), "kept on this machine");
        visit.the("#look").sendKeys("as the");
        visit.until(any -> paper().equals(light));
        assertEquals(List.of(), visit.complaints());
    }

    private String paper() {
        return (String) visit.driver().executeScript("return getComputedStyle(document.body).backgroundColor");
    }

    private void through(String door, String address) {
        visit.driver().findElement(By.linkText(door)).click();
        visit.untilAddressHas(address);
    }
}
