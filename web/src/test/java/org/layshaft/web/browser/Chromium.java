package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Starts the system's own browser. Where there is none, tests are skipped, unless the system property {@code browser} is
 * {@code required}: then they fail.
 */
final class Chromium {
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private Chromium() {}

    static ChromeDriver start(String... more) {
        requireBrowser();
        List<String> arguments = new ArrayList<>(List.of(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--window-size=1400,1000"));
        arguments.addAll(List.of(more));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions().setBinary(BROWSER.toFile()).addArguments(arguments);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .withLogFile(new File("target/chromedriver.log"))
                .build();
        return new ChromeDriver(service, options);
    }

    /** The same with scripts switched off. */
    static ChromeDriver startWithoutScripts() {
        ChromeDriver driver = start();
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        return driver;
    }

    private static void requireBrowser() {
        boolean present = Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
        String missing = "There is no Chromium at %s with its driver at %s.".formatted(BROWSER, DRIVER);
        if (System.getProperty("browser", "").equals("required")) {
            assertTrue(present, missing);
        }
        assumeTrue(present, missing + " The browser tests are skipped.");
    }
}
