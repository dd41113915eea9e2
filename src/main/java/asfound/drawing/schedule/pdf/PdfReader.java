package asfound.drawing.schedule.pdf;

import asfound.drawing.page.PageTree;
import asfound.drawing.schedule.sheet.Continuations;
import asfound.drawing.schedule.sheet.Extent;
import asfound.drawing.schedule.sheet.Part;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/**
 * Reads the schedules of a PDF. What is kept of a page is what was read from it; a page that takes too long or is broken is
 * reported, and the others are read.
 */
final class PdfReader {

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

    ScheduleReading read(Source source) {
        int pages;
        List<Problem> lost;
        SharedPages shared;
        try (PDDocument document = opening.open(source)) {
            lost = UnreadPages.lost(source, PageTree.of(document));
            pages = document.getNumberOfPages();
            GuardedPage page = new GuardedPage(source, settings, limits);
            shared = new SharedPages(source, Math.min(pages, limits.pages()), page, limits, opening);
            if (pages < 2 * SharedPages.FEWEST_EACH) {
                shared.read(document);
                return together(source, shared.readings(), pages, lost);
            }
        } catch (InvalidPasswordException e) {
            return none(source, "The PDF is locked with a password.", "Save a copy without a password.");
        } catch (IOException | RuntimeException e) {
            return none(
                    source,
                    "The PDF is damaged and cannot be opened.",
                    "Print or export the drawing to PDF once more.");
        }
        shared.readInParallel();
        return together(source, shared.readings(), pages, lost);
    }

    private static ScheduleReading none(Source source, String message, String remedy) {
        return new ScheduleReading(List.of(), List.of(new Problem(Place.file(source.file()), message, remedy)), 0);
    }

    private ScheduleReading together(Source source, List<PageReading> read, int pages, List<Problem> lost) {
        List<Part> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(lost);
        for (PageReading page : read) {
            parts.addAll(page.parts());
            problems.addAll(page.problems());
        }
        if (pages > read.size()) problems.add(new UnreadPages(limits).beyondLimit(source, read.size(), pages));
        List<Directory> joined =
                Continuations.join(parts).stream().map(Extent::checked).toList();
        problems.addAll(Continuations.apart(joined));
        return new ScheduleReading(joined, problems, pages);
    }
}
