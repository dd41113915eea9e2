package asfound.bench;

import asfound.audit.Audit;
import asfound.report.page.Chromium;
import asfound.report.page.PageWriter;
import asfound.sample.LargeCampus;
import java.nio.file.Files;
import java.nio.file.Path;

/** How long the page of 400 panels and 12,000 circuits takes to write, to open in Chromium, and to react there. */
public final class PageBench {

    private static final String AFTER_NEXT_FRAME =
            "requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0));";

    private PageBench() {}

    public static void main(String[] args) throws Exception {
        Path file = Files.createTempFile("asfound-bench", ".html");
        Audit campus = LargeCampus.audit();
        for (String run : new String[] {"cold", "warm"}) {
            long start = System.nanoTime();
            PageWriter.write(campus, file);
            say("written, " + run, (System.nanoTime() - start) / 1e6);
        }
        System.out.printf(
                "size: %.1f MB, %d findings%n",
                Files.size(file) / 1e6, campus.findings().size());
        try (Chromium browser = new Chromium()) {
            for (String run : new String[] {"first", "second", "third"}) {
                browser.driver.get("about:blank");
                browser.driver.get(file.toUri().toString());
                say(run + " opening, to the load event", number(browser, """
                        const e = performance.getEntriesByType('navigation')[0]; return e.loadEventEnd;"""));
                say("  first paint", number(browser, """
                        const p = performance.getEntriesByName('first-contentful-paint')[0];
                        return p ? p.startTime : -1;"""));
            }
            time(browser, "search typed", """
                    const s = document.getElementById('search'); s.value = 'LP-3.4'; s.dispatchEvent(new Event('input'));""");
            time(browser, "sheet opened from the search", "document.querySelector('#hits a').click();");
            time(browser, "shown on the one-line", "document.getElementById('sheet-find').click();");
            time(browser, "findings filtered", """
                    const b = document.getElementById('by-severity'); b.value = 'notice';
                    b.dispatchEvent(new Event('change', {bubbles: true}));""");
            time(browser, "filter taken away", "document.querySelector('.filters button[type=reset]').click();");
            time(browser, "another sheet of the one-line", """
                    const c = document.getElementById('sheet-choice'); c.value = '7';
                    c.dispatchEvent(new Event('change'));""");
            time(browser, "jump to the last section", "document.getElementById('equipment-title').scrollIntoView();");
        } finally {
            Files.delete(file);
        }
    }

    private static void time(Chromium browser, String what, String script) {
        say(
                what,
                ((Number) browser.driver.executeAsyncScript("const done = arguments[0], start = performance.now(); {"
                                + script + "} " + AFTER_NEXT_FRAME))
                        .doubleValue());
    }

    private static double number(Chromium browser, String script) {
        return ((Number) browser.driver.executeScript(script)).doubleValue();
    }

    private static void say(String what, double ms) {
        System.out.printf("%s: %.0f ms%n", what, ms);
    }
}
