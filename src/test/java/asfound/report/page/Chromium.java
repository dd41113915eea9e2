package asfound.report.page;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Debian's Chromium without a window, with a profile of its own that is thrown away. */
public final class Chromium implements AutoCloseable {

    private final Path profile;
    public final ChromeDriver driver;

    public Chromium() throws IOException {
        profile = Files.createTempDirectory("asfound-browser");
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments(List.of(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run",
                "--user-data-dir=" + profile));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile())
                        .usingAnyFreePort()
                        .build(),
                options);
        size(1440, 900);
    }

    /** The size of the page, in CSS pixels; a phone's where narrow. */
    public void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    public void scheme(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of("name", "forced-colors", "value", "none"))));
    }

    /** The reader's own colours in place of the page's, as a system set to high contrast has them. */
    public void forcedColours(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of("name", "forced-colors", "value", "active"))));
    }

    /**
     * What axe-core calls serious or critical, with the first places. Everything is laid out first: the checker measures
     * from afar, where the page has not yet laid out what is far from the screen.
     */
    public List<String> seriousBarriers() {
        driver.executeScript("for (const e of document.querySelectorAll('main *'))"
                + " if (getComputedStyle(e).contentVisibility === 'auto') e.style.contentVisibility = 'visible'");
        return new AxeBuilder()
                .analyze(driver).getViolations().stream()
                        .filter(r -> List.of("serious", "critical").contains(r.getImpact()))
                        .map((Rule r) -> r.getId() + ": "
                                + r.getNodes().stream()
                                        .map(n -> n.getHtml())
                                        .limit(3)
                                        .toList())
                        .toList();
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
        } catch (IOException | java.io.UncheckedIOException e) {
            // The browser may still be deleting its own files; the system's temporary folder takes the rest.
        }
    }
}
