package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The same with scripts switched off. */
class WithoutScriptsTest {
    private Visit visit;

    @BeforeEach
    void open() {
        visit = new Visit(Chromium.startWithoutScripts());
    }

    @AfterEach
    void close() {
        if (visit != null) {
            visit.close();
        }
    }

    @Test
    void askingReadingSteppingAndBreaking() {
        visit.go("/?layout=curlew");
        visit.the("#q").sendKeys("which gears still work if the 3-4 fork is bent", Keys.ENTER);
        visit.untilAddressHas("q=which");
        assertTrue(visit.row("4").contains("may work or may not"), visit.row("4"));

        visit.the(".steps a[href*='gear=4']").click();
        visit.untilAddressHas("gear=4");
        visit.the(".parts summary").click();
        visit.the(".parts").findElement(By.linkText("3-4 detent")).click();
        visit.untilAddressHas("part=3-4-detent");
        visit.the(".failures a.suppose").click();
        visit.untilAddressHas("fault=3-4-detent+weak");
        assertEquals(2, visit.all(".chip").size());
    }

    @Test
    void aDiagnosisIsCarriedOnByLinks() {
        visit.go("/suspects?layout=curlew");
        visit.the("#words").sendKeys("jumps out of third pulling", Keys.ENTER);
        visit.untilAddressHas("seen=pulling+3%3A+jumps-out");
        int suspects = visit.all(".suspect").size();

        visit.the(".tests li li a").click();
        visit.untilAddressHas("&seen=");
        assertTrue(visit.all(".noticed-so-far li").size() > 1);
        assertTrue(suspects > 1);
        visit.the(".suspect > p > a").click();
        visit.untilAddressHas("fault=");
        assertEquals(1, visit.all(".chip").size());
    }

    @Test
    void aBoxIsFoundLookedAtAndPutOnTheRoad() {
        visit.go("/layouts");
        visit.the("#where").sendKeys("two-shaft, five-speed, sliding idler", Keys.ENTER);
        visit.untilAddressHas("where=two-shaft");
        visit.driver().findElement(By.linkText("Plover")).click();
        visit.untilAddressHas("/box?layout=plover");
        visit.driver().findElement(By.linkText("On the road")).click();
        visit.untilAddressHas("/road?layout=plover");
        assertEquals(2, visit.all(".figure .untold").size(), "neither shifts nor pull can be told");

        visit.the("#facts summary").click();
        visit.the("#tyre").sendKeys("175/65 R14");
        visit.the("#revs").sendKeys("900-5500", Keys.ENTER);
        visit.untilAddressHas("revs=900-5500");
        assertEquals(1, visit.all(".figure .untold").size(), "the shifts can");
    }
}
