package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Everything with the keyboard alone. */
class KeyboardTest {
    private static final int MOST_STEPS = 200;

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
    void askingReadingSteppingAndBreaking() {
        visit.go("/?layout=curlew");
        tabTo("#q");
        press("which gears still work if the 3-4 fork is bent", Keys.ENTER);
        visit.untilAddressHas("q=which");

        tabTo(".steps a[href*='gear=3']");
        press(Keys.ENTER);
        visit.untilAddressHas("gear=3");
        assertTrue(focused().getDomAttribute("href").contains("gear=3"), "The focus stays on the step.");

        tabTo(".drawing a[href*='part=3-4-detent']");
        press(Keys.ENTER);
        visit.untilAddressHas("part=3-4-detent");
        assertEquals("part", focused().getDomAttribute("id"), "The focus goes to the part.");

        tabTo(".failures a.suppose");
        press(Keys.ENTER);
        visit.untilAddressHas("fault=3-4-detent+weak");

        tabTo(".verdicts summary");
        press(Keys.ENTER);
        visit.until(any -> visit.the(".verdicts details").getDomAttribute("open") != null);
    }

    @Test
    void theSkipLinkLeadsToTheAnswer() {
        visit.go("/?layout=curlew");
        press(Keys.TAB);
        assertEquals("Skip to the answer", focused().getText());
        press(Keys.ENTER);
        visit.until(any -> "answer".equals(focused().getDomAttribute("id")));
    }

    private void tabTo(String css) {
        for (int step = 0; step < MOST_STEPS; step++) {
            press(Keys.TAB);
            boolean there =
                    (boolean) visit.driver().executeScript("return document.activeElement.matches(arguments[0])", css);
            if (there) {
                return;
            }
        }
        throw new AssertionError("The Tab key does not lead to " + css);
    }

    private void press(CharSequence... keys) {
        new Actions(visit.driver()).sendKeys(keys).perform();
    }

    private WebElement focused() {
        return visit.driver().switchTo().activeElement();
    }
}
