package asfound.drawing.schedule.pdf;

import asfound.drawing.page.PageReader;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Source;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The pages of one PDF, each taken by the next worker that is free. */
final class SharedPages {

    /** So few pages are not worth a worker. */
    static final int FEWEST_EACH = 4;

    private static final int MOST_WORKERS = 8;

    private final Source source;
    private final Limits limits;
    private final PdfReader.Opening opening;
    private final GuardedPage page;
    private final UnreadPages unread;
    private final PageReading[] all;
    private final long deadline;
    private final AtomicInteger next = new AtomicInteger();
    /** What stopped a worker outside of any page. */
    private final AtomicReference<Throwable> stopped = new AtomicReference<>();

    /** @param count of the pages to be read */
    SharedPages(Source source, int count, GuardedPage page, Limits limits, PdfReader.Opening opening) {
        this.source = source;
        this.page = page;
        this.limits = limits;
        this.opening = opening;
        unread = new UnreadPages(limits);
        all = new PageReading[count];
        deadline = System.nanoTime() + limits.fileTime().toNanos();
    }

    /** Reads pages until there is none left. The document of a page that was given up is left to it and opened anew. */
    void read(PDDocument first) throws IOException {
        if (!goesThrough(first)) readAnew();
    }

    /** As many workers as there are cores; each opens the file for itself. */
    void readInParallel() {
        int cores = Runtime.getRuntime().availableProcessors();
        int workers = Math.max(1, Math.min(Math.min(cores, MOST_WORKERS), all.length / FEWEST_EACH));
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int w = 0; w < workers; w++)
                running.add(pool.submit(() -> {
                    readAnew();
                    return null;
                }));
            for (Future<?> f : running) await(f);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            pool.shutdownNow();
        }
    }

    /** The pages that a stopped worker did not reach are taken by the others, or reported with what stopped it. */
    private void await(Future<?> worker) throws InterruptedException {
        try {
            worker.get();
        } catch (ExecutionException e) {
            stopped.compareAndSet(null, e.getCause());
        }
    }

    private void readAnew() throws IOException {
        for (boolean done = false; !done; )
            try (PDDocument document = opening.open(source)) {
                done = goesThrough(document);
            }
    }

    /** False where a page was given up that may still be using the document. */
    private boolean goesThrough(PDDocument document) {
        PageReader reader = new PageReader(document, source.file(), limits.pageObjects(), limits.expandedBytes());
        try (GuardedPage.Threads threads = new GuardedPage.Threads()) {
            for (int i = next.getAndIncrement(); i < all.length; i = next.getAndIncrement()) {
                if (isLate()) return true;
                Optional<PageReading> read = page.read(reader, i + 1, deadline, threads);
                if (read.isEmpty()) {
                    Place place = Place.page(source.file(), i + 1);
                    all[i] = PageReading.none(isLate() ? unread.fileTooLong(place) : unread.tooLong(place));
                    return false;
                }
                all[i] = read.get();
            }
            return true;
        }
    }

    /** In the order of the pages, those among them that were not reached. */
    List<PageReading> readings() {
        List<PageReading> out = new ArrayList<>();
        for (int i = 0; i < all.length; i++)
            out.add(all[i] != null ? all[i] : PageReading.none(unreached(Place.page(source.file(), i + 1))));
        return out;
    }

    private Problem unreached(Place place) {
        Throwable why = stopped.get();
        return why == null || isLate() ? unread.fileTooLong(place) : unread.unreached(place, source, why);
    }

    private boolean isLate() {
        return System.nanoTime() > deadline;
    }
}
