package asfound.bench;

import asfound.audit.Audit;
import asfound.report.page.Chromium;
import asfound.report.page.PageWriter;
import asfound.sample.LargeCampus;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How long the page of 400 panels and 12,000 circuits takes to write, to open in Chromium, and to react there: the least
 * and the middle of several runs, each in a page opened anew. Takes the number of runs, 7 where none is given. Every
 * reaction is measured to the frame after the next, in which its outcome stands on the screen.
 */
public final class PageBench {

    /** The frame in which the change is painted, and the turn after it. */
    private static final String WHEN_SHOWN =
            "requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0));";

    private static final Map<String, String> REACTIONS = new LinkedHashMap<>();

    static {
        REACTIONS.put("search typed", """
                const s = document.getElementById('search'); s.value = 'LP-3.4'; s.dispatchEvent(new Event('input'));""");
        REACTIONS.put("sheet opened from the search", "document.querySelector('#hits a').click();");
        REACTIONS.put("shown on the one-line", "document.getElementById('sheet-find').click();");
        REACTIONS.put("equipment clicked in the picture", """
                document.querySelector('.plate:not([hidden]) .node[data-eq]:not([data-sheet])')
                    .dispatchEvent(new MouseEvent('click', {bubbles: true, cancelable: true}));""");
        REACTIONS.put("sheet closed", "document.getElementById('sheet-close').click();");
        REACTIONS.put("picture zoomed", "document.getElementById('zoom-in').click();");
        REACTIONS.put("picture moved", """
                const w = document.querySelector('.plate:not([hidden]) .window'); w.scrollLeft += 200; w.scrollTop += 80;""");
        REACTIONS.put("another sheet of the one-line", """
                const c = document.getElementById('sheet-choice'); c.value = '7';
                c.dispatchEvent(new Event('change'));""");
        REACTIONS.put("findings filtered", """
                const b = document.getElementById('by-severity'); b.value = 'notice';
                b.dispatchEvent(new Event('change', {bubbles: true}));""");
        REACTIONS.put("filter taken away", "document.querySelector('.filters button[type=reset]').click();");
        REACTIONS.put("jump to the last section", "document.getElementById('equipment-title').scrollIntoView();");
    }

    private final Map<String, List<Double>> times = new LinkedHashMap<>();

    private PageBench() {}

    public static void main(String[] args) throws Exception {
        new PageBench().run(args.length == 0 ? 7 : Integer.parseInt(args[0]));
    }

    private void run(int runs) throws Exception {
        Path file = Files.createTempFile("asfound-bench", ".html");
        Audit campus = LargeCampus.audit();
        try (Chromium browser = new Chromium()) {
            for (int i = 0; i < runs; i++) {
                long start = System.nanoTime();
                PageWriter.write(campus, file);
                note("page written", (System.nanoTime() - start) / 1e6);
            }
            System.out.printf(
                    "%d pieces of equipment, %d devices, %d findings: %.1f MB%n",
                    campus.network().equipment().size(),
                    campus.network().devices().size(),
                    campus.findings().size(),
                    Files.size(file) / 1e6);
            for (int i = 0; i < runs; i++) open(browser, file);
            times.forEach((what, all) -> {
                Collections.sort(all);
                System.out.printf("%-40s least %5.0f ms, middle %5.0f ms%n", what, all.get(0), all.get(all.size() / 2));
            });
        } finally {
            Files.delete(file);
        }
    }

    private void open(Chromium browser, Path file) {
        browser.driver.get("about:blank");
        browser.driver.executeCdpCommand("Performance.enable", Map.of("timeDomain", "threadTicks"));
        double before = taken(browser);
        browser.driver.get(file.toUri().toString());
        note("opening: first paint", number(browser, """
                return performance.getEntriesByName('first-contentful-paint')[0].startTime;"""));
        note("opening: can be used", number(browser, """
                return performance.getEntriesByType('navigation')[0].domContentLoadedEventEnd;"""));
        note("opening: all loaded", number(browser, """
                return performance.getEntriesByType('navigation')[0].loadEventEnd;"""));
        note("opening: work of the processor", taken(browser) - before);
        REACTIONS.forEach((what, script) -> note(
                what,
                ((Number) browser.driver.executeAsyncScript(
                                "const done = arguments[0], start = performance.now(); {" + script + "} " + WHEN_SHOWN))
                        .doubleValue()));
    }

    /** What the page's thread has worked, in ms: other programs on the machine do not count. */
    @SuppressWarnings("unchecked")
    private static double taken(Chromium browser) {
        List<Map<String, Object>> metrics = (List<Map<String, Object>>) browser.driver
                .executeCdpCommand("Performance.getMetrics", Map.of())
                .get("metrics");
        return metrics.stream()
                .filter(m -> m.get("name").equals("TaskDuration"))
                .mapToDouble(m -> ((Number) m.get("value")).doubleValue() * 1000)
                .sum();
    }

    private void note(String what, double ms) {
        times.computeIfAbsent(what, k -> new ArrayList<>()).add(ms);
    }

    private static double number(Chromium browser, String script) {
        return ((Number) browser.driver.executeScript(script)).doubleValue();
    }
}
