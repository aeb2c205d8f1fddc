package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The drawing under somebody's hands. */
class SheetTest {
    private static Visit visit;

    @BeforeAll
    static void open() {
        visit = new Visit(Chromium.start());
    }

    @AfterAll
    static void close() {
        if (visit != null) {
            visit.close();
        }
    }

    @Test
    void aSleeveIsMovedByItsArrowAndBackByTheBackButton() {
        visit.go("/?layout=curlew&gear=3");
        visit.the("a.move[data-member='1-2-sleeve'][data-way='front']").click();
        visit.untilAddressHas("sleeve=1-2-sleeve:front");
        assertTrue(
                visit.the("#by-hand").getText().contains("Locked"),
                visit.the("#by-hand").getText());
        assertTrue(visit.the("#by-hand").getText().contains("interlock plunger"));

        visit.driver().navigate().back();
        visit.until(any -> visit.all("#by-hand").isEmpty());
    }

    @Test
    void aSleeveIsDraggedToItsNextPlace() {
        visit.go("/?layout=curlew&gear=N");
        drag(".drawing [data-part='3-4-sleeve'] .body", 40);
        visit.untilAddressHas("sleeve=3-4-sleeve:rear");
        assertTrue(
                visit.the("#by-hand").getText().contains("It drives, 1.800"),
                visit.the("#by-hand").getText());

        drag(".drawing [data-part='3-4-rail'] .body", -40);
        visit.untilAddressHas("sleeve=none");
    }

    /** Presses near the upper edge of what is named, where nothing lies over it. */
    private static void drag(String css, int right) {
        visit.driver().executeScript("document.querySelector(arguments[0]).scrollIntoView({block: 'center'})", css);
        List<?> at = (List<?>) visit.driver()
                .executeScript(
                        "const box = document.querySelector(arguments[0]).getBoundingClientRect();"
                                + "return [Math.round(box.left + 4), Math.round(box.top + 4)]",
                        css);
        new Actions(visit.driver())
                .moveToLocation(((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue())
                .clickAndHold()
                .moveByOffset(right / 2, 0)
                .moveByOffset(right - right / 2, 0)
                .release()
                .perform();
    }

    @Test
    void whatAPartIsStandsInAPanelThatEscapeTakesAway() {
        visit.go("/?layout=curlew&gear=3&rpm=2400&nm=180&words=uk");
        visit.driver().executeScript("document.querySelector(\".drawing [data-part='cluster-driven']\").focus()");
        new Actions(visit.driver())
                .sendKeys(Keys.TAB)
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.TAB)
                .keyUp(Keys.SHIFT)
                .perform();
        WebElement tip = visit.the("#tip");
        visit.until(any -> tip.isDisplayed());
        assertTrue(tip.getText().contains("47 teeth"), tip.getText());
        assertTrue(tip.getText().contains("1225.53 rpm"), tip.getText());
        assertTrue(tip.getText().contains("352.5 N·m"), tip.getText());

        new Actions(visit.driver()).sendKeys(Keys.ESCAPE).perform();
        assertFalse(tip.isDisplayed());

        new Actions(visit.driver())
                .moveToElement(visit.the(".drawing [data-part='3-4-rail']"))
                .perform();
        visit.until(any -> tip.isDisplayed());
        new Actions(visit.driver()).moveToElement(tip).perform();
        assertTrue(tip.isDisplayed(), "It stays while it is pointed at.");
    }

    @Test
    void plusAndMinusAndNoughtLookNearerAndFartherAndAtTheWhole() {
        visit.go("/?layout=heron&gear=N");
        visit.driver().executeScript("document.querySelector('.canvas').focus()");
        double before = width();
        new Actions(visit.driver()).sendKeys("+", "+").perform();
        double near = width();
        assertTrue(near > before * 1.4, before + " to " + near);
        new Actions(visit.driver()).sendKeys("0").perform();
        double whole = width();
        assertTrue(whole <= number("document.querySelector('.canvas').clientWidth"), "All of it is to be seen.");
        visit.the("[data-tool=nearer]").click();
        assertEquals(whole * 1.25, width(), 1);
        visit.the(".steps a[href*='gear=N']").click();
        visit.until(any -> visit.all("[aria-busy]").isEmpty());
        assertEquals(whole * 1.25, width(), 1, "It stays so from gear to gear.");
    }

    @Test
    void aWheelOverTheDrawingScrollsThePage() {
        visit.go("/?layout=curlew&gear=3");
        visit.the("[data-tool=nearer]").click();
        visit.the("[data-tool=nearer]").click();
        double top = number("window.scrollY");
        new Actions(visit.driver())
                .scrollFromOrigin(
                        org.openqa.selenium.interactions.WheelInput.ScrollOrigin.fromElement(visit.the(".canvas")),
                        0,
                        200)
                .perform();
        visit.until(any -> number("window.scrollY") > top + 50);
    }

    @Test
    void itTurnsWhenToldAndStopsWhenTold() {
        visit.go("/?layout=curlew&gear=3");
        assertEquals(0, number("document.querySelectorAll('.rolling[d]').length"), "It never begins by itself.");
        visit.the("[data-tool=turn]").click();
        visit.until(any -> number("document.querySelectorAll('.rolling[d]').length") > 10);
        visit.the("[data-tool=turn]").click();
        String still = marks();
        assertEquals(still, marks());

        visit.go("/?layout=curlew&gear=3&view=end");
        visit.the("[data-tool=turn]").click();
        visit.until(any -> number("document.querySelectorAll('.spinning[transform]').length") > 5);
    }

    @Test
    void whoWantsLittleMotionTurnsItByHand() {
        visit.driver()
                .executeCdpCommand(
                        "Emulation.setEmulatedMedia",
                        Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        visit.go("/?layout=curlew&gear=3&view=end");
        assertEquals("Turn on by an eighth", visit.the("[data-tool=turn]").getText());
        visit.the("[data-tool=turn]").click();
        Object turned = visit.driver()
                .executeScript(
                        "return document.querySelector(\"[data-part='input-gear'] .spinning\").getAttribute('transform')");
        assertTrue(turned.toString().startsWith("rotate(45.00 "), turned.toString());
        visit.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of()));
    }

    @Test
    void nothingIsComplainedOf() {
        visit.go("/?layout=sanderling&gear=2&view=end");
        visit.complaints();
        visit.the("[data-tool=turn]").click();
        visit.the(".seen-from a").click();
        visit.untilAddressHas("layout=sanderling");
        assertEquals(List.of(), visit.complaints());
    }

    /** All that a first visit loads, as it comes over the wire unpacked. */
    @Test
    void aFirstVisitIsLight() {
        visit.go("/");
        double bytes =
                number("performance.getEntriesByType('resource').concat(performance.getEntriesByType('navigation'))"
                        + ".reduce((sum, each) => sum + each.decodedBodySize, 0)");
        assertTrue(bytes < 300_000, bytes + " bytes");
    }

    private static String marks() {
        return (String) visit.driver()
                .executeScript(
                        "return [...document.querySelectorAll('.rolling')].map(each => each.getAttribute('d')).join()");
    }

    private static double width() {
        return number("document.querySelector('.canvas svg').getBoundingClientRect().width");
    }

    private static double number(String script) {
        return ((Number) visit.driver().executeScript("return " + script)).doubleValue();
    }
}
