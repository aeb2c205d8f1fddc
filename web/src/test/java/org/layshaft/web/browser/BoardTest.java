package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.web.board.Library;
import org.layshaft.web.http.Served;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;

/** A layout of one's own from its beginning till it is saved, with scripts and without. */
class BoardTest {
    @TempDir
    private Path folder;

    /** What reaches beyond the window, where the page can be scrolled aside at all. */
    private static final String STICKING_OUT = "const page = document.documentElement;"
            + "if (page.scrollWidth <= page.clientWidth) return [];"
            + "return [page.scrollWidth + ' in ' + page.clientWidth, ...[...document.querySelectorAll('body *')]"
            + ".filter(each => !each.closest('.doors, .canvas'))"
            + ".filter(each => each.getBoundingClientRect().right > page.clientWidth"
            + " || each.scrollWidth > page.clientWidth)"
            + ".map(each => each.tagName + ' ' + each.id + ' ' + each.className)];";

    private Visit visit;

    @AfterEach
    void close() {
        if (visit != null) {
            visit.close();
        }
    }

    private void open(ChromeDriver driver) {
        visit = new Visit(driver, new Served(Library.over(PackSource.onClassPath(), Optional.of(Shelf.in(folder)))));
    }

    @Test
    void withoutScriptsByButtonsAlone() throws IOException {
        open(Chromium.startWithoutScripts());
        visit.go("/board");
        visit.the("a[href='/board?start=dunlin']").click();
        visit.untilAddressHas("start=dunlin");
        WebElement text = visit.the("#text");
        String begun = text.getDomProperty("value");
        type(text, begun.replace("20, \"meshes\"", "2, \"meshes\""));
        visit.the("button[value='check']").click();
        assertEquals("line 10", visit.the("#findings .found a").getText());
        assertEquals(1, visit.all("#line-10 .found").size());

        type(visit.the("#text"), begun.replace("Two-speed demonstration box", "Ours"));
        visit.the("button[value='check']").click();
        visit.the("button[name='gear'][value='2']").click();
        visit.until(any -> visit.the("button[name='gear'][value='2']").getDomAttribute("aria-pressed") != null);
        assertTrue(
                visit.the("#drawn").getText().endsWith("2nd"),
                visit.the("#drawn").getText());
        visit.the("button[value='save']").click();
        visit.untilAddressHas("open=own/dunlin");
        assertTrue(visit.the(".notice").getText().startsWith("Saved."));
        assertTrue(Files.readString(folder.resolve("own/layouts/dunlin.json")).contains("Ours"));
        visit.go("/?layout=dunlin");
        assertFalse(visit.all(".verdicts tbody tr").isEmpty());
    }

    @Test
    void typedLookedAtAndSaved() throws IOException {
        open(Chromium.start());
        visit.go("/board?start=dunlin");
        visit.until(any -> visit.the("#gutter").isDisplayed());
        WebElement text = visit.the("#text");
        String begun = text.getDomProperty("value");
        visit.until(any -> visit.the("#ratios").getText().contains("4.000"));

        replaceAll(text, begun.replace("\"teeth\": 40 }", "\"teeth\": 400000 }"));
        visit.until(any -> visit.the("#verdict").getText().contains("broken"));
        assertTrue(visit.the(".picture").getDomAttribute("class").contains("stale"));
        assertEquals("13", visit.the("#gutter .broken").getText().replaceAll("[^0-9]", ""));
        visit.the("#findings .found a").click();
        assertTrue(
                visit.the("#here").getText().startsWith("Line 13:"),
                visit.the("#here").getText());

        replaceAll(text, begun.replace("Two-speed", "Our own"));
        visit.until(any -> visit.the("#verdict").getText().startsWith("Sound"));
        visit.the("#ratios button[value='2']").click();
        visit.until(any -> visit.the("#drawn").getText().endsWith("gear 2"));
        visit.the("#undo").click();
        visit.until(any -> visit.the("#verdict").getText().contains("broken"));
        visit.the("#redo").click();
        visit.until(any -> visit.the("#verdict").getText().startsWith("Sound"));
        visit.the("button[value='save']").click();
        visit.untilAddressHas("open=own/dunlin");
        assertTrue(Files.readString(folder.resolve("own/layouts/dunlin.json")).contains("Our own"));
        assertEquals(List.of(), visit.complaints());
    }

    @Test
    void keysAndNamesAreOffered() {
        open(Chromium.start());
        visit.go("/board?start=dunlin");
        visit.until(any -> visit.the("#gutter").isDisplayed());
        WebElement text = visit.the("#text");
        visit.until(any -> visit.the("#text").getDomAttribute("aria-autocomplete") != null);
        caretBehind("\"gear\": \"cluster-first\", \"teeth\": 20");
        text.sendKeys(", \"mod");
        untilOffered("module_mm");
        text.sendKeys(Keys.ENTER);
        visit.until(any -> value().contains("\"teeth\": 20, \"module_mm\":  }"));
        text.sendKeys("2.5, \"meshes\": \"fir");
        untilOffered("first");
        text.sendKeys(Keys.ENTER);
        visit.until(any -> value().contains("\"meshes\": \"first\" }"));
        text.sendKeys(Keys.chord(Keys.CONTROL, Keys.SPACE), Keys.ESCAPE);
        assertFalse(visit.the(".offers").isDisplayed());
    }

    private void untilOffered(String first) {
        visit.until(any -> visit.the(".offers [aria-selected='true']").getText().startsWith(first));
    }

    @Test
    void theFormWritesTheSameTextAndKeepsItsComments() {
        open(Chromium.start());
        visit.go("/board?start=dunlin");
        visit.until(any -> visit.the("#as-form").isDisplayed());
        visit.the("#as-form").click();
        set("shafts/countershaft/along/1/teeth", "21");
        visit.until(any -> value().contains("\"cluster-first\", \"teeth\": 21"));
        visit.the("[data-at='shafts/countershaft/along#add-bearing']").click();
        set("shafts/countershaft/along/2/bearing", "countershaft-bearing");
        visit.the("[data-at='shafts/countershaft/along/2#up']").click();
        assertTrue(
                value().indexOf("countershaft-bearing") < value().indexOf("\"cluster-first\", \"teeth\""), this::value);
        new Select(visit.the("[data-at='shafts/countershaft/along/1#fact']")).selectByValue("thrust");
        new Select(visit.the("[data-at='shafts/countershaft/along/1/thrust']")).selectByValue("\"both\"");
        assertTrue(value().contains("\"thrust\": \"both\""), this::value);
        assertTrue(value().contains("// from the front, the clutch end, to the rear"), this::value);
        assertEquals(
                List.of(),
                new AxeBuilder()
                                .withTags(List.of(
                                        "wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                                .analyze(visit.driver())
                                .getViolations()
                                .stream()
                                .map(rule -> rule.getId() + rule.getNodes())
                                .toList());
        visit.screenshot("board-form");
        visit.the("#undo").click();
        visit.until(any -> !value().contains("\"thrust\": \"both\""));
        assertEquals(List.of(), visit.complaints());
        narrow();
    }

    /** On a telephone the form is no wider than the window. */
    private void narrow() {
        visit.driver()
                .executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of("width", 390, "height", 800, "deviceScaleFactor", 1, "mobile", false));
        visit.the(".form-way");
        assertEquals(List.of(), visit.driver().executeScript(STICKING_OUT));
        visit.screenshot("board-form-390");
    }

    /** The form is drawn anew after each change, so the field may be another meanwhile. */
    private void set(String at, String value) {
        visit.until(any -> {
            visit.the("[data-at='%s']".formatted(at)).sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB);
            return true;
        });
    }

    private String value() {
        return visit.driver().findElement(By.id("text")).getDomProperty("value");
    }

    private void caretBehind(String words) {
        visit.driver().executeScript("""
                const area = document.getElementById('text');
                const place = area.value.indexOf(arguments[0]) + arguments[0].length;
                area.focus();
                area.setSelectionRange(place, place);
                """, words);
    }

    /** As if it were typed, at once. */
    private void replaceAll(WebElement area, String text) {
        visit.driver()
                .executeScript(
                        "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input', {bubbles: true}));",
                        area,
                        text);
    }

    private void type(WebElement area, String text) {
        area.clear();
        area.sendKeys(text);
    }
}
