package asfound.drawing.schedule.pdf;

import asfound.drawing.page.Page;
import asfound.drawing.page.PageReader;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.KnownTexts;
import asfound.drawing.schedule.sheet.Names;
import asfound.drawing.schedule.sheet.Part;
import asfound.drawing.schedule.sheet.SheetReader;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.PatientThread;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;

/**
 * Reads one page that may be broken, endless or hostile: within its time, and with a word about whatever of it was not
 * read.
 */
final class GuardedPage {

    private final Source source;
    private final Settings settings;
    private final Limits limits;
    private final UnreadPages unread;

    GuardedPage(Source source, Settings settings, Limits limits) {
        this.source = source;
        this.settings = settings;
        this.limits = limits;
        unread = new UnreadPages(limits);
    }

    /** Where one worker reads its pages, and where he explains them, which may be given up while the page is not. */
    static final class Threads implements AutoCloseable {
        private final PatientThread reading = new PatientThread();
        private final PatientThread explaining = new PatientThread();
        /** Of the pages that he explained. */
        private KnownTexts known = new KnownTexts();

        @Override
        public void close() {
            reading.close();
            explaining.close();
        }
    }

    /**
     * Empty where the page did not end by itself when its time was over, and may still be using the reader.
     *
     * @param deadline of the whole file, in nanoseconds
     */
    Optional<PageReading> read(PageReader reader, int number, long deadline, Threads threads) {
        Place place = Place.page(source.file(), number);
        long until = Math.min(deadline, System.nanoTime() + limits.pageTime().toNanos());
        try {
            // the work looks at the time itself and mostly ends first
            Duration longest = Duration.ofNanos(until - System.nanoTime()).plusMillis(500);
            return threads.reading.within(longest, () -> {
                Page page = reader.read(number, until);
                if (System.nanoTime() > until) throw new TimeoutException("reading the page");
                return inTime(page, place, until, threads);
            });
        } catch (PageReader.TooLongException | TimeoutException e) {
            // not by the clock: it may have been given up a part of a millisecond before the deadline
            return none(until == deadline ? unread.fileTooLong(place) : unread.tooLong(place));
        } catch (PageReader.TooMuchException e) {
            return none(unread.tooMuch(place));
        } catch (PageReader.ExpandingException e) {
            return none(unread.expanding(place));
        } catch (OutOfMemoryError e) {
            return none(unread.outOfMemory(place));
        } catch (Exception | StackOverflowError e) {
            return none(unread.damaged(place));
        }
    }

    /** Whoever is given up or breaks off keeps what he knew of texts, for he may still be adding to it: the next begins anew. */
    private PageReading inTime(Page page, Place place, long until, Threads threads) throws Exception {
        KnownTexts known = threads.known;
        threads.known = new KnownTexts();
        PageReading reading = threads.explaining
                .within(Duration.ofNanos(until - System.nanoTime()), () -> explained(page, place, known))
                .orElseThrow(() -> new TimeoutException("explaining the page"));
        threads.known = known;
        return reading;
    }

    private static Optional<PageReading> none(Problem why) {
        return Optional.of(PageReading.none(why));
    }

    private PageReading explained(Page page, Place place, KnownTexts known) {
        List<Part> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        SheetReader sheets = new SheetReader(settings, known);
        for (Sheet sheet : page.sheets()) {
            SheetReader.SheetReading read = sheets.read(sheet, Names.ofFile(source.file()));
            parts.addAll(read.parts());
            problems.addAll(read.problems());
        }
        problems.addAll(Legibility.problems(page, place, !parts.isEmpty()));
        if (page.covered() > 0)
            problems.add(new Problem(
                    place,
                    page.covered() + (page.covered() == 1 ? " letter of the page lies" : " letters of the page lie")
                            + " under areas painted over them and cannot be seen; they were not read.",
                    "Look whether what the page shows there is what is meant."));
        if (page.tooDeep())
            problems.add(new Problem(
                    place,
                    "Parts of the page are drawn within each other deeper than they are followed; what they show was not"
                            + " read.",
                    "Check this page by hand, or print it to a new PDF."));
        if (page.undrawn() > 0 && !parts.isEmpty())
            problems.add(new Problem(
                    place,
                    page.undrawn() + " of the page's " + page.letters()
                            + " letters are not drawn: they are what a machine"
                            + " read from a picture, or another text than the page shows. They were read, and nothing is"
                            + " said to agree with them.",
                    "Check what was read against what the page shows."));
        if (!page.lost().isEmpty())
            problems.add(new Problem(
                    place,
                    "The page's content is damaged or not all there (" + String.join("; ", page.lost())
                            + "). What was read of it may be wrong or missing, and nothing is said to agree with it.",
                    "Check this page by hand, and get the drawing once more from where it came from."));
        if (page.lost().isEmpty() && page.undrawn() == 0) return new PageReading(parts, problems);
        return new PageReading(
                parts.stream()
                        .map(p -> p.with(GuardedPdf.doubtful(p.directory())))
                        .toList(),
                problems);
    }
}
