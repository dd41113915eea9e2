package asfound.drawing.schedule.pdf;

import asfound.drawing.page.Soundness;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.Patience;
import asfound.recordset.ProblemList;
import asfound.recordset.Reasons;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.time.Duration;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads a PDF that may be broken, endless or hostile: looks first whether its content is whole and bounded, and gives the
 * reading up after the time for one file.
 */
public final class GuardedPdf {

    private static final String TOO_LONG_REMEDY =
            "Split the file, print it to a new PDF, or " + Limit.FILE_SECONDS.raise() + ".";

    private final Settings settings;
    private final Limits limits;

    public GuardedPdf(Settings settings, Limits limits) {
        this.settings = settings;
        this.limits = limits;
    }

    public ScheduleReading read(Source source) {
        ProblemList problems = new ProblemList(source.file());
        long deadline = System.nanoTime() + limits.fileTime().toNanos();
        try {
            Soundness sound = Soundness.of(source.path(), limits, deadline);
            say(sound, problems);
            if (sound.expanding() || sound.late()) return new ScheduleReading(List.of(), problems.all(), 0);
            ScheduleReading read = patiently(source);
            read.problems().forEach(p -> problems.add("problems of one sort: " + p.message(), p));
            sayBarePages(source, read, problems);
            List<Directory> all = sound.damaged() == 0
                    ? read.directories()
                    : read.directories().stream().map(GuardedPdf::doubtful).toList();
            return new ScheduleReading(all, problems.all(), read.pages());
        } catch (IOException e) {
            Problem gone = new Problem(
                    Place.file(source.file()), Reasons.unreadable(e), "Check that it is there and run again.");
            return new ScheduleReading(List.of(), List.of(gone), 0);
        }
    }

    private void say(Soundness sound, ProblemList problems) {
        if (sound.expanding())
            problems.add(
                    "A part of the PDF expands to more than " + limits.expandedBytes()
                            + " bytes, the limit for expanded content; the file was not read.",
                    "If it is meant to be so large, " + Limit.EXPANDED_MB.raise() + ".");
        if (sound.late()) problems.add(tooLong(), TOO_LONG_REMEDY);
        if (sound.cutOff())
            problems.add(
                    "The PDF breaks off: its end mark is missing. Pages may be missing.",
                    "Copy it again from where it came from.");
        if (sound.damaged() > 0)
            problems.add(
                    "The PDF is damaged: " + sound.damaged()
                            + (sound.damaged() == 1 ? " part of it fails its" : " parts of it fail their")
                            + " check sum. What was read may be wrong, and nothing is said to agree with it.",
                    "Copy it again from where it came from.");
    }

    /** Pages that gave neither a directory nor a problem: a schedule that was not recognised must not pass for none. */
    private void sayBarePages(Source source, ScheduleReading read, ProblemList problems) {
        BitSet spoken = new BitSet();
        for (Directory d : read.directories()) {
            spoken.set(d.place().pageNumber());
            d.circuits().forEach(c -> spoken.set(c.place().pageNumber()));
        }
        boolean whole = false;
        for (Problem p : read.problems()) {
            whole |= p.place() instanceof Place.InFile;
            spoken.set(p.place().pageNumber());
        }
        List<Integer> bare = IntStream.rangeClosed(1, Math.min(read.pages(), limits.pages()))
                .filter(p -> !spoken.get(p))
                .boxed()
                .toList();
        if (read.pages() == 0 ? whole : bare.isEmpty()) return;
        boolean one = bare.size() == 1;
        problems.add(
                "pages without a schedule",
                new Problem(
                        one ? Place.page(source.file(), bare.get(0)) : Place.file(source.file()),
                        bare.isEmpty()
                                ? "No panel schedule was recognised: the PDF has no page that can be read."
                                : one
                                        ? "No panel schedule was recognised on this page."
                                        : "No panel schedule was recognised on pages " + runs(bare) + ".",
                        "If a page shows one, read it by hand or export it as CSV."));
    }

    /** {@code 1-3, 7}. */
    private static String runs(List<Integer> pages) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pages.size(); ) {
            int from = i;
            while (i + 1 < pages.size() && pages.get(i + 1) == pages.get(i) + 1) i++;
            text.append(text.isEmpty() ? "" : ", ").append(pages.get(from));
            if (i > from) text.append('-').append(pages.get(i));
            i++;
        }
        return text.toString();
    }

    private ScheduleReading patiently(Source source) {
        // the work looks at the time itself and mostly ends first
        Duration longest = limits.fileTime().plusSeconds(2);
        String message, remedy = TOO_LONG_REMEDY;
        try {
            Optional<ScheduleReading> reading =
                    Patience.within(longest, () -> new PdfReader(settings, limits).read(source));
            if (reading.isPresent()) return reading.get();
            message = tooLong();
        } catch (OutOfMemoryError e) {
            message = "The PDF asks for more memory than there is ("
                    + (Runtime.getRuntime().maxMemory() >> 20) + " MB); it was not read.";
            remedy = "Split the file, or give Java more memory: java -Xmx4g -jar asfound.jar ...";
        } catch (Exception | StackOverflowError e) {
            message =
                    "The PDF is damaged and could not be read (" + e.getClass().getSimpleName() + ").";
            remedy = "Print or export the drawing to PDF once more.";
        }
        Problem given = new Problem(Place.file(source.file()), message, remedy);
        return new ScheduleReading(List.of(), List.of(given), 0);
    }

    private String tooLong() {
        return "Reading the file took longer than " + limits.fileTime().toSeconds()
                + " s, the limit for one file; it was not read.";
    }

    /** Below the threshold: equipment that a damaged drawing shows never agrees with it. */
    static Directory doubtful(Directory d) {
        double confidence = Math.min(d.confidence(), Directory.DOUBTFUL / 2);
        return new Directory(
                d.panel(), d.header(), d.circuits(), d.totals(), d.place(), confidence, d.unread(), d.problems());
    }
}
