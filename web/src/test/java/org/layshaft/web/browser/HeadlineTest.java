package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Choose a box, ask, read, step through the gears, break a part. */
class HeadlineTest {
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
    void theHeadlineJob() {
        visit.go("/");
        visit.the(".layouts summary").click();
        visit.driver().findElement(By.partialLinkText("Curlew")).click();
        visit.untilAddressHas("layout=curlew");

        ask("which gears still work if the 3-4 fork is bent");
        assertTrue(visit.the(".reading").getText().contains("Understood as"));
        assertTrue(visit.row("2").contains("works"), visit.row("2"));
        assertTrue(visit.row("3").contains("may work or may not"), visit.row("3"));
        visit.screenshot("headline");

        unfoldReasonsOfThird();
        stepTo("4");
        breakAPart();
        assertEquals(List.of(), visit.complaints());
    }

    private void ask(String question) {
        WebElement box = visit.the("#q");
        box.sendKeys(question);
        box.submit();
        visit.untilAddressHas("q=which");
    }

    private void unfoldReasonsOfThird() {
        WebElement why = visit.all(".verdicts tbody tr").get(2).findElement(By.tagName("details"));
        assertTrue(why.getText().length() < 60, why.getText());
        why.findElement(By.tagName("summary")).click();
        assertTrue(why.getText().contains("3-4 fork is bent"), why.getText());
        visit.screenshot("reasons");
    }

    private void stepTo(String gear) {
        visit.the(".steps").findElement(By.partialLinkText(gear)).click();
        visit.untilAddressHas("gear=" + gear);
        assertEquals("Gear " + gear, visit.the(".block div:nth-child(2) dd").getText());
        assertTrue(visit.the("#status").getDomProperty("textContent").length() > 10);
    }

    private void breakAPart() {
        WebElement fork = visit.the(".drawing a[href*='part=1-2-fork']");
        visit.driver()
                .executeScript(
                        "arguments[0].dispatchEvent(new MouseEvent('click', {bubbles: true, cancelable: true}))", fork);
        visit.untilAddressHas("part=1-2-fork");
        assertEquals("1-2 fork", visit.the("#part-heading").getText());
        visit.screenshot("part");
        visit.the(".failures a[href*='1-2-fork+broken']").click();
        visit.untilAddressHas("fault=1-2-fork+broken");
        assertEquals(2, visit.all(".chip").size());
    }

    @Test
    void backLeadsBack() {
        visit.go("/?layout=curlew");
        stepTo("2");
        stepTo("3");
        visit.driver().navigate().back();
        visit.untilAddressHas("gear=2");
        visit.until(any -> visit.the(".block div:nth-child(2) dd").getText().equals("Gear 2"));
        assertEquals(List.of(), visit.complaints());
    }
}
