package asfound.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.finding.VagueEntry;
import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Standing;
import asfound.sample.AuditSketch;
import asfound.sample.BrackenMill;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
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
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.Select;

/** The report page as a person meets it. */
@Tag("browser")
class PageInBrowserTest {

    @TempDir
    static Path folder;

    private static Chromium browser;

    @BeforeAll
    static void open() throws Exception {
        PageWriter.write(BrackenMill.audit(), folder.resolve("index.html"));
        browser = new Chromium();
    }

    @AfterAll
    static void close() {
        if (browser != null) browser.close();
    }

    @BeforeEach
    void load() {
        browser.size(1440, 900);
        browser.scheme("light");
        browser.driver.get("about:blank");
        browser.driver.get(folder.resolve("index.html").toUri().toString());
    }

    @Test
    void the_first_screen_says_how_many_which_and_why() {
        assertThat(visibleWithin(900, By.tagName("h1"))).isTrue();
        assertThat(visibleWithin(900, By.cssSelector(".cautions"))).isTrue();
        WebElement first = find("#fails .cases > li");
        assertThat(first.getText()).contains("HP-1", "PV-1 still feeds HP-1", "MSB/1 and HP-1/12");
        assertThat(first.getRect().getY() + first.getRect().getHeight()).isLessThan(900);
    }

    @Test
    void equipment_is_found_by_any_way_of_writing_it_and_followed_to_its_marked_drawing() {
        find("#search").sendKeys("hp 1");
        assertThat(find("#hits").getText()).isEqualTo("HP-1 do not isolate by the drawing");
        find("#hits a").click();

        assertThat(find("#sheet").getText())
                .contains("Still live from PV-1", "PV-1 by PV-1/D, then HP-1/12", "survey/walk-2026.csv, row");
        WebElement link = find("#sheet a.redline");
        assertThat(link.getText()).endsWith("drawings/HP-1.pdf, page 1");
        assertThat(link.getDomProperty("href"))
                .isEqualTo(folder.resolve("redlines/HP-1.pdf").toUri() + "#page=2");
    }

    @Test
    void equipment_chosen_in_the_picture_opens_its_sheet() {
        choose("eq-LP-1A");

        assertThat(find("#sheet h3").getText()).isEqualTo("LP-1A");
        assertThat(find("#sheet").getText())
                .contains("T-1 by T-1/1: drawn, and the survey speaks against it")
                .contains("T-1 by T-1/2: traced in the building, and on no drawing");
    }

    @Test
    void the_devices_of_the_chosen_equipments_verdict_are_named_in_the_picture() {
        choose("eq-LP-1A");

        assertThat(find("#picture-key").getText().replaceAll("\\s+", " "))
                .isEqualTo("LP-1A drawn point T-1/1 found point T-1/2 keeps it live T-1/2");
        assertThat(browser.driver.findElements(By.cssSelector(".said")).stream()
                        .map(g -> g.findElements(By.tagName("use")).stream()
                                .map(u -> u.getDomAttribute("href"))
                                .toList()))
                .containsExactlyInAnyOrder(List.of("#ring-drawn"), List.of("#ring-found", "#ring-live"));
    }

    @Test
    void in_the_readers_own_colours_all_that_is_drawn_is_seen_and_meanings_are_told_by_shape_and_word() {
        for (String scheme : List.of("light", "dark")) {
            browser.forcedColours(scheme);
            choose("eq-LP-1A");
            assertThat(browser.driver.executeScript("""
                    const colour = (selector, name) => getComputedStyle(document.querySelector(selector))[name];
                    const paper = getComputedStyle(document.body).backgroundColor;
                    const wrong = [];
                    for (const [selector, name] of [['.wire.found path', 'stroke'], ['.wire.contradicted path', 'stroke'],
                        ['.wire.confirmed path', 'stroke'], ['.picture .box', 'stroke'], ['.picture .bus', 'stroke'],
                        ['.picture .name', 'fill'], ['.picture .detail', 'fill'], ['.ring.drawn', 'stroke'],
                        ['.wire.found text', 'fill'], ['.signal', 'borderTopColor'], ['.bar .part', 'fill'],
                        ['symbol .fill', 'fill'], ['.says-drawn', 'borderLeftColor']])
                      if (colour(selector, name) === paper) wrong.push(selector);
                    for (const selector of ['.picture .box', '.wire .core', '.bar .whole'])
                      if (colour(selector, selector === '.wire .core' ? 'stroke' : 'fill') !== paper
                          && !colour(selector, 'fill').startsWith('rgba(0, 0, 0, 0')) wrong.push(selector + ' is filled');
                    return wrong;""")).as(scheme).isEqualTo(List.of());
            assertThat(dashes(".wire.contradicted > path"))
                    .isNotEqualTo(dashes(".wire.found > path"))
                    .isNotEqualTo("none");
            assertThat(borderStyle(".says-drawn")).isEqualTo("dashed");
            assertThat(borderStyle(".says-found")).isEqualTo("solid");
            for (WebElement signal : browser.driver.findElements(By.cssSelector("#finding-list .signal")))
                assertThat(signal.getDomProperty("textContent")).isIn("danger", "warning", "caution", "notice");
            find("#sheet-close").click();
        }
    }

    private static Object dashes(String selector) {
        return browser.driver.executeScript(
                "return getComputedStyle(document.querySelector(arguments[0])).strokeDasharray", selector);
    }

    private static Object borderStyle(String selector) {
        return browser.driver.executeScript(
                "return getComputedStyle(document.querySelector(arguments[0])).borderLeftStyle", selector);
    }

    @Test
    void findings_are_filtered_and_the_count_says_so() {
        assertThat(find("#shown").getText()).isEqualTo("All 6 shown");
        new Select(find("#by-equipment")).selectByVisibleText("HP-1");
        assertThat(find("#shown").getText()).isEqualTo("4 of 6 shown");
        new Select(find("#by-severity")).selectByVisibleText("warning");
        assertThat(shownFindings()).containsExactly("feeds-other", "undocumented-feed");
        new Select(find("#by-kind")).selectByVisibleText("feeds other");
        assertThat(shownFindings()).containsExactly("feeds-other");
        new Select(find("#by-drawing")).selectByVisibleText("drawings/T-1.pdf");
        assertThat(find("#shown").getText()).isEqualTo("0 of 6 shown");
        find(".filters button[type=reset]").click();
        assertThat(shownFindings()).hasSize(6);
    }

    @Test
    void a_link_to_a_finding_that_is_filtered_away_shows_it_all_the_same() {
        new Select(find("#by-severity")).selectByVisibleText("notice");
        choose("eq-T-1");
        find("#sheet a[href^='#crossed-feeds']").click();

        assertThat(shownFindings()).hasSize(6);
        assertThat(find("#sheet").isDisplayed()).isFalse();
    }

    @Test
    void the_keyboard_alone_does_it_all() {
        press(Keys.TAB);
        assertThat(focused().getText()).isEqualTo("Skip to the isolation verdicts");
        press("/");
        press("lp");
        press(Keys.ARROW_DOWN);
        press(Keys.ARROW_DOWN);
        assertThat(focused().getText()).startsWith("LP-1B");
        press(Keys.ENTER);
        assertThat(find("#sheet h3").getText()).isEqualTo("LP-1B");
        press(Keys.TAB);
        assertThat(focused().getText()).isEqualTo("Show on the one-line");
        press(Keys.ENTER);
        assertThat(focused().getDomAttribute("data-eq")).isEqualTo("eq-LP-1B");
        press(Keys.ENTER);
        assertThat(find("#sheet h3").getText()).isEqualTo("LP-1B");
        press(Keys.ESCAPE);
        assertThat(find("#sheet").isDisplayed()).isFalse();
        assertThat(focused().getDomAttribute("data-eq")).as("focus returns").isEqualTo("eq-LP-1B");
    }

    @Test
    void the_picture_is_zoomed_and_moved_by_keys_and_buttons() {
        browser.size(700, 600);
        WebElement window = find(".window");
        browser.driver.executeScript("arguments[0].focus()", window);
        double before = pictureWidth();
        press("+");
        assertThat(pictureWidth()).isGreaterThan(before);
        press(Keys.ARROW_RIGHT);
        press(Keys.ARROW_RIGHT);
        await("return document.querySelector('.window').scrollLeft > 0");
        press("0");
        assertThat(pictureWidth())
                .as("the whole picture fits")
                .isLessThanOrEqualTo(window.getRect().getWidth());
        find("#zoom-full").click();
        assertThat(pictureWidth())
                .isCloseTo(number("return document.querySelector('.picture').viewBox.baseVal.width"), within(0.1));
    }

    @Test
    void text_of_a_drawing_never_runs_and_is_shown_as_it_stands() {
        choose("eq-HP-1");
        find("#sheet summary").click();

        assertThat(browser.driver.executeScript("return window.ran === undefined"))
                .isEqualTo(true);
        assertThat(browser.driver.executeScript("return document.images.length"))
                .isEqualTo(0L);
        assertThat(find("#sheet .circuits").getText()).contains(BrackenMill.HOSTILE);
        assertThat(browser.driver.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }

    @Test
    void even_a_script_that_got_into_the_page_would_not_run() {
        browser.driver.executeScript(
                "const s = document.createElement('script'); s.textContent = 'window.ran = 3';"
                        + " document.body.append(s); document.body.insertAdjacentHTML('beforeend', '<img src=x onerror=\"window.ran = 4\">');");
        browser.driver.executeAsyncScript("setTimeout(arguments[0], 100)");

        assertThat(browser.driver.executeScript("return window.ran === undefined"))
                .isEqualTo(true);
        assertThat(browser.driver.manage().logs().get(LogType.BROWSER).getAll().toString())
                .contains("Content Security Policy");
    }

    @Test
    void a_phone_shows_which_equipment_fails_on_its_first_screen_and_nothing_spills_over() {
        browser.size(390, 844);
        browser.driver.navigate().refresh();

        assertThat(visibleWithin(844, By.cssSelector(".which"))).isTrue();
        assertThat(find(".which").getText()).isEqualTo("HP-1 LP-1A LP-1B LP-4");
        assertThat(number("return document.documentElement.scrollWidth")).isEqualTo(390);
        browser.driver.executeScript("document.querySelector('.window').scrollIntoView()");
        assertThat(browser.driver.executeScript("const w = document.querySelector('.window').getBoundingClientRect(),"
                        + " u = document.querySelector('.node[data-eq=eq-UTILITY]').getBoundingClientRect();"
                        + " return u.top >= w.top && u.bottom <= w.bottom && u.left >= w.left && u.right <= w.right"))
                .as("the picture begins at the source")
                .isEqualTo(true);
    }

    @Test
    void names_without_end_do_not_spill_over_a_phone() throws Exception {
        String name = "DISTRIBUTION".repeat(40);
        Path file = folder.resolve("long.html");
        PageWriter.write(
                new AuditSketch(name)
                        .equipment(EquipmentKind.PANEL, name)
                        .verdict(name, Verdict.Standing.FAILS, name + "/1", name + "/2", name, name + " fails.")
                        .finding(VagueEntry::new, Severity.NOTICE, name + "/1", name, name, name)
                        .build(),
                file);
        browser.size(390, 844);
        browser.driver.get(file.toUri().toString());

        assertThat(number("return document.documentElement.scrollWidth")).isEqualTo(390);
    }

    @Test
    void a_picture_that_could_not_be_drawn_leaves_the_rest_of_the_page_working() throws Exception {
        AuditSketch thicket = new AuditSketch("Thicket").equipment(EquipmentKind.PANEL, "A", "B");
        for (int i = 0; i <= 250; i++) thicket.feeder("A", "B", Standing.FOUND, "A/" + i);
        Path file = folder.resolve("thicket.html");
        PageWriter.write(thicket.build(), file);
        browser.driver.get(file.toUri().toString());

        assertThat(find(".plate").getText()).contains("This sheet is not drawn");
        find("#zoom-in").click();
        find("#search").sendKeys("b", Keys.ENTER);
        assertThat(find("#sheet").getText()).contains("A by A/250");
        find("#sheet-find").click();
        assertThat(browser.driver.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }

    @Test
    void without_its_script_the_page_still_says_everything() {
        browser.driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            browser.driver.navigate().refresh();
            assertThat(find("#search").isDisplayed())
                    .as("nothing is offered that does nothing")
                    .isFalse();
            find("#fails .cases a").click();
            assertThat(browser.driver.getCurrentUrl()).endsWith("#eq-HP-1");
            assertThat(find("#eq-HP-1").getText()).contains("Still live from PV-1");
            assertThat(find(".picture").isDisplayed()).isTrue();
        } finally {
            browser.driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    @Test
    void on_paper_stand_the_verdicts_the_cautions_and_every_finding() throws Exception {
        String paper = printed();

        assertThat(paper)
                .contains("4 of 12 pieces of equipment must", "Test for absence of voltage", "feeds HP-1 through");
        for (Finding f : BrackenMill.audit().findings())
            assertThat(paper).contains(f.message().substring(0, 20));
        assertThat(paper).contains("are not printed here").doesNotContain("Find equipment");
    }

    @Test
    void an_equipments_open_sheet_is_printed_alone_with_its_cautions() throws Exception {
        choose("eq-LP-1A");

        assertThat(printed())
                .startsWith("LP-1A")
                .contains("Drawn to open", "Test for absence of voltage", "never means")
                .doesNotContain("Findings 6");
    }

    private static String printed() throws Exception {
        Object data = browser.driver
                .executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true))
                .get("data");
        try (PDDocument pdf = Loader.loadPDF(Base64.getDecoder().decode((String) data))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ").strip();
        }
    }

    @Test
    void an_accessibility_checker_finds_nothing_serious() {
        for (int width : new int[] {1440, 390})
            for (String scheme : List.of("light", "dark")) {
                browser.scheme(scheme);
                checked(scheme, width);
            }
        browser.forcedColours("dark");
        checked("the reader's own colours, dark", 1440);
        browser.forcedColours("light");
        checked("the reader's own colours, light", 390);
    }

    private static void checked(String scheme, int width) {
        browser.size(width, 900);
        assertThat(browser.seriousBarriers()).as("%s at %d", scheme, width).isEmpty();
        browser.driver.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
        browser.driver.executeScript("document.querySelector('.cases a.eq').click()");
        assertThat(browser.seriousBarriers())
                .as("%s at %d, a sheet open", scheme, width)
                .isEmpty();
        browser.driver.executeScript("document.getElementById('sheet-close').click()");
    }

    /** Clicks equipment in the picture, clear of the bar at the top. */
    private static void choose(String id) {
        WebElement node = find(".node[data-eq=" + id + "]");
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", node);
        node.click();
    }

    private static List<String> shownFindings() {
        return browser.driver.findElements(By.cssSelector("#finding-list .finding:not([hidden])")).stream()
                .map(f -> f.getDomAttribute("data-kind"))
                .toList();
    }

    private static WebElement find(String selector) {
        return browser.driver.findElement(By.cssSelector(selector));
    }

    private static WebElement focused() {
        return browser.driver.switchTo().activeElement();
    }

    private static void press(CharSequence keys) {
        new Actions(browser.driver).sendKeys(keys).perform();
    }

    private static boolean visibleWithin(int height, By what) {
        WebElement element = browser.driver.findElement(what);
        return element.isDisplayed()
                && element.getRect().getY() + element.getRect().getHeight() <= height;
    }

    private static double pictureWidth() {
        return number("return document.querySelector('.picture').getBoundingClientRect().width");
    }

    private static double number(String script) {
        return ((Number) browser.driver.executeScript(script)).doubleValue();
    }

    private static void await(String condition) {
        new org.openqa.selenium.support.ui.WebDriverWait(browser.driver, java.time.Duration.ofSeconds(5))
                .until(d -> browser.driver.executeScript(condition));
    }
}
