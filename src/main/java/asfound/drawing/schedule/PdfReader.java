package asfound.drawing.schedule;

import asfound.drawing.page.Page;
import asfound.drawing.page.PageReader;
import asfound.drawing.page.Sheet;
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
import org.apache.pdfbox.pdmodel.PDDocument;

/** Reads the schedules of a PDF. */
final class PdfReader {

    private final Settings settings;
    private final Limits limits;

    PdfReader(Settings settings, Limits limits) {
        this.settings = settings;
        this.limits = limits;
    }

    ScheduleReading read(Source source) {
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        int pages = 0;
        try (PDDocument document = Loader.loadPDF(source.path().toFile())) {
            pages = document.getNumberOfPages();
            PageReader reader = new PageReader(document, source.file());
            SheetReader sheets = new SheetReader(settings);
            for (int p = 1; p <= pages; p++) {
                Page page = reader.read(p, System.nanoTime() + limits.pageTime().toNanos());
                for (Sheet sheet : page.sheets()) {
                    SheetReader.SheetReading read = sheets.read(sheet, Names.ofFile(source.file()));
                    directories.addAll(read.directories());
                    problems.addAll(read.problems());
                }
                if (page.letters() == 0)
                    problems.add(new Problem(Place.page(source.file(), p), "No readable text.", ""));
            }
        } catch (IOException e) {
            problems.add(
                    new Problem(Place.file(source.file()), "The PDF cannot be opened: " + e.getMessage() + ".", ""));
        }
        return new ScheduleReading(directories, problems, pages);
    }
}
