package asfound.drawing.schedule.sample;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.multipdf.PDFMergerUtility;

/** A set of many sheets in one PDF, to measure a reader on. */
public final class SampleBook {

    private SampleBook() {}

    /** Draws at least as many pages as asked for, from the first seed on, into one file. */
    public static void draw(Path file, int pages, Path scratch) throws IOException {
        PDFMergerUtility merger = new PDFMergerUtility();
        for (int i = 0; i < pages; i++) {
            Path one = scratch.resolve("page-" + i + ".pdf");
            SampleSheets.draw(i + 1, one, false);
            merger.addSource(one.toFile());
        }
        merger.setDestinationFileName(file.toString());
        merger.mergeDocuments(null);
    }
}
