package asfound.drawing.schedule;

import asfound.drawing.page.Page;
import asfound.drawing.page.PageReader;
import asfound.drawing.page.PageTree;
import asfound.drawing.page.Sheet;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.Patience;
import asfound.recordset.Reasons;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
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

    private final Opening opening;

    /** How a file is opened; each worker does so for itself. */
    interface Opening {
        PDDocument open(Source source) throws IOException;
    }

    PdfReader(Settings settings, Limits limits) {
        this(
                settings,
                limits,
                source -> Loader.loadPDF(
                        source.path().toFile(),
                        MemoryUsageSetting.setupMainMemoryOnly(limits.expandedBytes()).streamCache));
    }

    PdfReader(Settings settings, Limits limits, Opening opening) {
        this.settings = settings;
        this.limits = limits;
        this.opening = opening;
    }

    /** What one page gave. */
    private record PageReading(List<Part> parts, List<Problem> problems) {}

    ScheduleReading read(Source source) {
        int pages;
        List<Problem> tree;
        try (PDDocument document = opening.open(source)) {
            tree = treeProblems(source, PageTree.of(document));
            pages = document.getNumberOfPages();
            if (pages < 2 * FEWEST_PAGES_EACH) {
                Work work = new Work(source, Math.min(pages, limits.pages()), deadline());
                work.on(document);
                return together(work, pages, tree);
            }
        } catch (InvalidPasswordException e) {
            return none(source, "The PDF is locked with a password.", "Save a copy without a password.");
        } catch (IOException | RuntimeException e) {
            return none(
                    source,
                    "The PDF is damaged and cannot be opened.",
                    "Print or export the drawing to PDF once more.");
        }
        Work work = new Work(source, Math.min(pages, limits.pages()), deadline());
        inParallel(work);
        return together(work, pages, tree);
    }

    /** The pages of one file, each taken by the next worker that is free. */
    private final class Work {

        final Source source;
        final PageReading[] all;
        final long deadline;
        private final AtomicInteger next = new AtomicInteger();
        /** What stopped a worker outside of any page. */
        final AtomicReference<Throwable> stopped = new AtomicReference<>();

        Work(Source source, int pages, long deadline) {
            this.source = source;
            this.all = new PageReading[pages];
            this.deadline = deadline;
        }

        boolean isLate() {
            return System.nanoTime() > deadline;
        }

        /** Reads pages until there is none left. The document of a page that was given up is left to it and opened anew. */
        void on(PDDocument first) throws IOException {
            if (!reads(pages(first))) onNewCopies();
        }

        void onNewCopies() throws IOException {
            for (boolean done = false; !done; )
                try (PDDocument document = opening.open(source)) {
                    done = reads(pages(document));
                }
        }

        private PageReader pages(PDDocument document) {
            return new PageReader(document, source.file(), limits.pageObjects(), limits.expandedBytes());
        }

        /** False where a page was given up that may still be using the document. */
        private boolean reads(PageReader reader) {
            for (int i = next.getAndIncrement(); i < all.length; i = next.getAndIncrement()) {
                if (isLate()) return true;
                Optional<PageReading> read = page(source, reader, i + 1, deadline);
                if (read.isEmpty()) {
                    all[i] = late(source, i + 1, isLate());
                    return false;
                }
                all[i] = read.get();
            }
            return true;
        }
    }

    /** Pages that the file holds and does not lead to must not pass for none. */
    private static List<Problem> treeProblems(Source source, PageTree tree) {
        List<Problem> problems = new ArrayList<>();
        Place place = Place.file(source.file());
        String remedy = "Print the drawing to a new PDF, and count its pages.";
        if (tree.loops())
            problems.add(new Problem(
                    place,
                    "The PDF's list of its pages leads back into itself. Pages may not have been read.",
                    remedy));
        if (tree.lost() > 0)
            problems.add(new Problem(
                    place,
                    "The PDF's list of its pages leads to nothing "
                            + (tree.lost() == 1 ? "once" : tree.lost() + " times") + ": pages may be missing.",
                    remedy));
        if (tree.pages() > tree.stated())
            problems.add(new Problem(
                    place,
                    "The PDF says that it has " + tree.stated() + (tree.stated() == 1 ? " page" : " pages")
                            + " and holds " + tree.pages() + ": not all of them were read.",
                    remedy));
        return problems;
    }

    private static ScheduleReading none(Source source, String message, String remedy) {
        return new ScheduleReading(List.of(), List.of(new Problem(Place.file(source.file()), message, remedy)), 0);
    }

    private long deadline() {
        return System.nanoTime() + limits.fileTime().toNanos();
    }

    private void inParallel(Work work) {
        int cores = Runtime.getRuntime().availableProcessors();
        int workers = Math.max(1, Math.min(Math.min(cores, MOST_WORKERS), work.all.length / FEWEST_PAGES_EACH));
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int w = 0; w < workers; w++)
                running.add(pool.submit(() -> {
                    work.onNewCopies();
                    return null;
                }));
            for (Future<?> f : running) wait(f, work);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            pool.shutdownNow();
        }
    }

    /** The pages that a stopped worker did not reach are taken by the others, or reported with what stopped it. */
    private static void wait(Future<?> worker, Work work) throws InterruptedException {
        try {
            worker.get();
        } catch (ExecutionException e) {
            work.stopped.compareAndSet(null, e.getCause());
        }
    }

    /** Empty where the page did not end by itself when its time was over. */
    private Optional<PageReading> page(Source source, PageReader reader, int number, long deadline) {
        long until = Math.min(deadline, System.nanoTime() + limits.pageTime().toNanos());
        Place place = Place.page(source.file(), number);
        try {
            // the work looks at the time itself and mostly ends first
            Duration longest = Duration.ofNanos(until - System.nanoTime()).plusMillis(500);
            return Patience.within(longest, () -> {
                Page page = reader.read(number, until);
                if (System.nanoTime() > until) throw new TimeoutException("reading the page");
                return Patience.within(
                                Duration.ofNanos(until - System.nanoTime()), () -> explained(source, page, place))
                        .orElseThrow(() -> new TimeoutException("explaining the page"));
            });
        } catch (PageReader.TooLongException | TimeoutException e) {
            // not by the clock: it may have been given up a part of a millisecond before the deadline
            return Optional.of(late(source, number, until == deadline));
        } catch (PageReader.TooMuchException e) {
            return Optional.of(failed(
                    place,
                    "The page holds more than " + limits.pageObjects()
                            + " letters or ruled lines, the limit for one page; it was not read.",
                    "Check this page by hand, export it without what is not needed, or " + Limit.PAGE_OBJECTS.raise()
                            + "."));
        } catch (PageReader.ExpandingException e) {
            return Optional.of(failed(
                    place,
                    "The page's content expands to more than " + limits.expandedBytes()
                            + " bytes, the limit for expanded content; it was not read.",
                    "Check this page by hand, export it once more, or " + Limit.EXPANDED_MB.raise() + "."));
        } catch (OutOfMemoryError e) {
            return Optional.of(failed(
                    place,
                    "The page holds more than there is memory for ("
                            + (Runtime.getRuntime().maxMemory() >> 20) + " MB); it was not read.",
                    "Check this page by hand, or give Java more memory: java -Xmx4g -jar asfound.jar ..."));
        } catch (Exception | StackOverflowError e) {
            return Optional.of(failed(
                    place,
                    "The page's content is damaged and was not read.",
                    "Check this page by hand, or export it once more."));
        }
    }

    /** @param fileIsOver it is the file's time that ended, not the page's */
    private PageReading late(Source source, int number, boolean fileIsOver) {
        Place place = Place.page(source.file(), number);
        if (fileIsOver) return new PageReading(List.of(), List.of(fileTooLong(place)));
        return failed(
                place,
                "The page holds more than can be read in " + limits.pageTime().toSeconds() + " s.",
                "Check this page by hand, export it once more, or " + Limit.PAGE_SECONDS.raise() + ".");
    }

    private PageReading explained(Source source, Page page, Place place) {
        List<Part> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        SheetReader sheets = new SheetReader(settings);
        for (Sheet sheet : page.sheets()) {
            SheetReader.SheetReading read = sheets.read(sheet, Names.ofFile(source.file()));
            parts.addAll(read.parts());
            problems.addAll(read.problems());
        }
        problems.addAll(Legibility.problems(page, place, !parts.isEmpty()));
        if (page.tooDeep())
            problems.add(new Problem(
                    place,
                    "Parts of the page are drawn within each other deeper than they are followed; what they show was not"
                            + " read.",
                    "Check this page by hand, or print it to a new PDF."));
        if (page.lost().isEmpty()) return new PageReading(parts, problems);
        problems.add(new Problem(
                place,
                "The page's content is damaged or not all there (" + String.join("; ", page.lost())
                        + "). What was read of it may be wrong or missing, and nothing is said to agree with it.",
                "Check this page by hand, and get the drawing once more from where it came from."));
        return new PageReading(
                parts.stream()
                        .map(p -> p.with(GuardedPdf.doubtful(p.directory())))
                        .toList(),
                problems);
    }

    private static PageReading failed(Place place, String message, String remedy) {
        return new PageReading(List.of(), List.of(new Problem(place, message, remedy)));
    }

    private Problem fileTooLong(Place page) {
        return new Problem(
                page,
                "The page was not read: the file takes longer than "
                        + limits.fileTime().toSeconds() + " s.",
                "Split the file, or " + Limit.FILE_SECONDS.raise() + ".");
    }

    private Problem unreached(Work work, int number) {
        Place place = Place.page(work.source.file(), number);
        Throwable why = work.stopped.get();
        if (why == null || work.isLate()) return fileTooLong(place);
        if (why instanceof OutOfMemoryError)
            return new Problem(
                    place,
                    "The page was not read: the file asks for more memory than there is ("
                            + (Runtime.getRuntime().maxMemory() >> 20) + " MB).",
                    "Split the file, or give Java more memory: java -Xmx4g -jar asfound.jar ...");
        if (why instanceof IOException gone && !Files.isReadable(work.source.path()))
            return new Problem(
                    place, "The page was not read. " + Reasons.unreadable(gone), "Put it back and run again.");
        return new Problem(
                place,
                "The page was not read: the file could not be opened once more ("
                        + why.getClass().getSimpleName() + "). It may be damaged, or have changed meanwhile.",
                "Run again; if that does not help, print the drawing to a new PDF.");
    }

    private ScheduleReading together(Work work, int pages, List<Problem> tree) {
        Source source = work.source;
        PageReading[] all = work.all;
        List<Part> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(tree);
        for (int i = 0; i < all.length; i++) {
            if (all[i] == null) problems.add(unreached(work, i + 1));
            else {
                parts.addAll(all[i].parts());
                problems.addAll(all[i].problems());
            }
        }
        if (pages > all.length)
            problems.add(new Problem(
                    Place.file(source.file()),
                    "Only the first " + all.length + " of " + pages + " pages were read.",
                    "Split the file, or " + Limit.PAGES.raise() + "."));
        List<Directory> joined =
                Continuations.join(parts).stream().map(Extent::checked).toList();
        problems.addAll(Continuations.apart(joined));
        return new ScheduleReading(joined, problems, pages);
    }
}
