package asfound.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.isolation.Verdict;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.report.Reports;
import asfound.report.folder.OutputFolder;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.Select;

/** The whole report of the demo building, opened where it was written. */
@Tag("browser")
class DemoReportInBrowserTest {

    private static final Path DEMO = Path.of("fixtures/kestrel-wharf");

    @TempDir
    static Path folder;

    private static Path report;
    private static Audit audit;
    private static Chromium browser;

    @BeforeAll
    static void write() throws Exception {
        report = folder.resolve("report");
        audit = Audits.of(RecordSets.open(DEMO, Limits.usual()), Limits.usual(), (stage, done, of) -> {});
        OutputFolder.at(report, DEMO).write(stage -> Reports.write(audit, Limits.usual(), stage, (s, done, of) -> {}));
        browser = new Chromium();
    }

    @AfterAll
    static void close() {
        if (browser != null) browser.close();
    }

    @BeforeEach
    void open() {
        browser.driver.get("about:blank");
        browser.driver.get(report.resolve("index.html").toUri().toString());
    }

    @Test
    void the_first_screen_names_every_equipment_that_fails() {
        List<String> fails = audit.verdicts().stream()
                .filter(v -> v.standing() == Verdict.Standing.FAILS)
                .map(Verdict::equipment)
                .toList();

        assertThat(find("h1").getText())
                .startsWith(fails.size() + " of " + audit.verdicts().size());
        assertThat(browser.driver.findElements(By.cssSelector("#fails .cases h3")))
                .extracting(WebElement::getText)
                .containsExactlyElementsOf(fails);
    }

    @Test
    void a_crossed_panel_is_followed_from_the_search_to_its_page_of_the_marked_drawing() throws Exception {
        find("#search").sendKeys("lp2a", Keys.ENTER);
        assertThat(find("#sheet h3").getText()).isEqualTo("LP-2A");
        find("#sheet a[href^='#crossed-feeds']").click();

        WebElement finding = browser.driver.findElements(By.cssSelector(".finding")).stream()
                .filter(f -> f.getText().contains("LDP/7") && f.getText().contains("crossed feeds"))
                .findFirst()
                .orElseThrow();
        WebElement link = finding.findElement(By.cssSelector("a.redline"));
        String drawn = link.getText().replaceFirst("^\\W+", "");
        URI target = URI.create(link.getDomProperty("href"));
        int page = Integer.parseInt(target.getFragment().replace("page=", ""));

        assertThat(drawn).isEqualTo("drawings/E-601.pdf, page " + (page - 1));
        try (PDDocument marked = Loader.loadPDF(Path.of(target.getPath()).toFile());
                PDDocument drawing =
                        Loader.loadPDF(DEMO.resolve("drawings/E-601.pdf").toFile())) {
            assertThat(text(marked, page)).isEqualTo(text(drawing, page - 1));
            assertThat(marked.getPage(page - 1).getAnnotations()).isNotEmpty();
        }
    }

    @Test
    void every_link_to_a_file_beside_the_page_finds_it() {
        assertThat(browser.driver.findElements(By.cssSelector("a[href]")).stream()
                        .map(a -> a.getDomAttribute("href"))
                        .filter(href -> !href.startsWith("#"))
                        .distinct()
                        .map(href -> report.toUri().resolve(href.replaceFirst("#.*", "")))
                        .map(Path::of))
                .hasSizeGreaterThan(6)
                .allMatch(Files::isRegularFile);
    }

    @Test
    void filters_by_drawing_and_kind_leave_what_the_audit_holds() {
        new Select(find("#by-drawing")).selectByVisibleText("drawings/E-602.pdf");
        new Select(find("#by-kind")).selectByVisibleText("crossed feeds");
        long held = audit.findings().stream()
                .filter(f -> f.kind().equals("crossed-feeds"))
                .filter(f -> f.drawings().stream().anyMatch(p -> p.file().equals("drawings/E-602.pdf")))
                .count();

        assertThat(held).isPositive();
        assertThat(find("#shown").getText())
                .isEqualTo(held + " of " + audit.findings().size() + " shown");
    }

    @Test
    void neither_the_browser_nor_an_accessibility_checker_complains() {
        assertThat(browser.seriousBarriers()).isEmpty();
        assertThat(browser.driver.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }

    private static String text(PDDocument pdf, int page) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf);
    }

    private static WebElement find(String selector) {
        return browser.driver.findElement(By.cssSelector(selector));
    }
}
