package org.layshaft.web.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.layshaft.web.http.Served;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A browser at the page. */
final class Visit implements AutoCloseable {
    private static final Path SCREENSHOTS = Path.of("target/screenshots");
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Served served;
    private final ChromeDriver driver;

    Visit(ChromeDriver driver) {
        this(driver, new Served());
    }

    Visit(ChromeDriver driver, Served served) {
        this.driver = driver;
        this.served = served;
    }

    void go(String pathAndQuery) {
        driver.get(served.at(pathAndQuery).toString());
    }

    ChromeDriver driver() {
        return driver;
    }

    /** The element, once it is there. */
    WebElement the(String css) {
        return until(any ->
                driver.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    <T> T until(ExpectedCondition<T> condition) {
        return new WebDriverWait(driver, PATIENCE)
                .ignoring(StaleElementReferenceException.class)
                .until(condition);
    }

    void untilAddressHas(String part) {
        until(any -> driver.getCurrentUrl().contains(part));
        until(any -> driver.findElements(By.cssSelector("[aria-busy]")).isEmpty());
    }

    /** The words of the gear's row: its name, its verdict, its ratio, what is noticed. */
    String row(String gear) {
        return the(".verdicts tbody").findElements(By.tagName("tr")).stream()
                .filter(row -> row.findElement(By.tagName("th")).getText().equals(gear))
                .map(WebElement::getText)
                .findFirst()
                .orElseThrow();
    }

    void scheme(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Everything that the browser complained of since last asked. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(Object::toString)
                .toList();
    }

    void screenshot(String name) {
        try {
            Files.createDirectories(SCREENSHOTS);
            Files.write(SCREENSHOTS.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        served.close();
    }
}
