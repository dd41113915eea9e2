package asfound.drawing.schedule;

import asfound.drawing.page.Page;
import asfound.drawing.page.PageReader;
import asfound.drawing.page.Sheet;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Patience;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/**
 * Reads the schedules of a PDF. Pages are read by as many workers as there are cores; each opens the file for itself, and
 * what is kept of a page is what was read from it. A page that takes too long or is broken is reported, and the others
 * are read.
 */
final class PdfReader {

    private static final int FEWEST_PAGES_EACH = 4;
    private static final int MOST_WORKERS = 8;

    private final Settings settings;
    private final Limits limits;

    PdfReader(Settings settings, Limits limits) {
        this.settings = settings;
        this.limits = limits;
    }

    /** What one page gave. */
    private record PageReading(List<Directory> directories, List<Problem> problems) {}

    ScheduleReading read(Source source) {
        int pages;
        try (PDDocument document = open(source)) {
            pages = document.getNumberOfPages();
            if (pages < 2 * FEWEST_PAGES_EACH) {
                PageReading[] all = new PageReading[Math.min(pages, limits.pages())];
                work(source, document, new AtomicInteger(), all, deadline());
                return together(source, all, pages);
            }
        } catch (InvalidPasswordException e) {
            return none(source, "The PDF is locked with a password.", "Save a copy without a password.");
        } catch (IOException | RuntimeException e) {
            return none(
                    source,
                    "The PDF is damaged and cannot be opened.",
                    "Print or export the drawing to PDF once more.");
        }
        PageReading[] all = new PageReading[Math.min(pages, limits.pages())];
        inParallel(source, all);
        return together(source, all, pages);
    }

    private PDDocument open(Source source) throws IOException {
        return Loader.loadPDF(
                source.path().toFile(), MemoryUsageSetting.setupMainMemoryOnly(limits.expandedBytes()).streamCache);
    }

    private static ScheduleReading none(Source source, String message, String remedy) {
        return new ScheduleReading(List.of(), List.of(new Problem(Place.file(source.file()), message, remedy)), 0);
    }

    private long deadline() {
        return System.nanoTime() + limits.fileTime().toNanos();
    }

    private void inParallel(Source source, PageReading[] all) {
        int cores = Runtime.getRuntime().availableProcessors();
        int workers = Math.max(1, Math.min(Math.min(cores, MOST_WORKERS), all.length / FEWEST_PAGES_EACH));
        AtomicInteger next = new AtomicInteger();
        long deadline = deadline();
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int w = 0; w < workers; w++)
                running.add(pool.submit(() -> {
                    try (PDDocument document = open(source)) {
                        work(source, document, next, all, deadline);
                    }
                    return null;
                }));
            for (Future<?> f : running) f.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            // the pages that were not reached are reported as not read
        } finally {
            pool.shutdownNow();
        }
    }

    private void work(Source source, PDDocument document, AtomicInteger next, PageReading[] all, long deadline) {
        PageReader reader = new PageReader(document, source.file());
        for (int i = next.getAndIncrement(); i < all.length; i = next.getAndIncrement()) {
            if (System.nanoTime() > deadline) return;
            all[i] = page(source, reader, i + 1, deadline);
        }
    }

    private PageReading page(Source source, PageReader reader, int number, long deadline) {
        long until = Math.min(deadline, System.nanoTime() + limits.pageTime().toNanos());
        Place place = Place.page(source.file(), number);
        try {
            Page page = reader.read(number, until);
            return Patience.within(Duration.ofNanos(until - System.nanoTime()), () -> explained(source, page, place))
                    .orElseThrow(() -> new TimeoutException("explaining the page"));
        } catch (PageReader.TooMuchException | TimeoutException e) {
            return failed(
                    place,
                    "The page holds more than can be read in "
                            + limits.pageTime().toSeconds() + " s.");
        } catch (Exception | StackOverflowError e) {
            return failed(place, "The page's content is damaged and was not read.");
        } catch (OutOfMemoryError e) {
            return failed(place, "The page holds more than there is memory for.");
        }
    }

    private PageReading explained(Source source, Page page, Place place) {
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        SheetReader sheets = new SheetReader(settings);
        for (Sheet sheet : page.sheets()) {
            SheetReader.SheetReading read = sheets.read(sheet, Names.ofFile(source.file()));
            directories.addAll(read.directories());
            problems.addAll(read.problems());
        }
        problems.addAll(Legibility.problems(page, place, !directories.isEmpty()));
        return new PageReading(directories, problems);
    }

    private static PageReading failed(Place place, String message) {
        return new PageReading(
                List.of(),
                List.of(new Problem(
                        place, message, "Check this page by hand, export it once more, or raise the limit.")));
    }

    private ScheduleReading together(Source source, PageReading[] all, int pages) {
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < all.length; i++) {
            if (all[i] == null)
                problems.add(new Problem(
                        Place.page(source.file(), i + 1),
                        "The page was not read: the file takes longer than "
                                + limits.fileTime().toSeconds() + " s.",
                        "Split the file, or raise the limit."));
            else {
                directories.addAll(all[i].directories());
                problems.addAll(all[i].problems());
            }
        }
        if (pages > all.length)
            problems.add(new Problem(
                    Place.file(source.file()),
                    "Only the first " + all.length + " of " + pages + " pages were read.",
                    "Split the file, or raise the limit of pages."));
        List<Directory> joined = Continuations.join(directories);
        problems.addAll(Continuations.apart(joined));
        return new ScheduleReading(joined, problems, pages);
    }
}
