package asfound.drawing.schedule.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stops a reader outside of any page is told as what it is, and a page that does not end costs itself alone. */
class PdfWorkersTest {

    @TempDir
    Path folder;

    private RecordSet set;

    @BeforeEach
    void twelve_blank_pages() throws Exception {
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < 12; i++) document.addPage(new PDPage());
            document.save(folder.resolve("sheets.pdf").toFile());
        }
        set = RecordSets.open(folder, Limits.usual());
    }

    private static PDDocument sound(asfound.recordset.Source source) throws IOException {
        return Loader.loadPDF(source.path().toFile());
    }

    private List<String> told(Limits limits, PdfReader.Opening opening) {
        ScheduleReading reading = new PdfReader(set.settings(), limits, opening)
                .read(set.sources().get(0));
        assertThat(reading.pages()).isEqualTo(12);
        return reading.problems().stream().map(Problem::inWords).toList();
    }

    /** The file opens once, to count its pages, and not again. */
    private static PdfReader.Opening thenFails(Throwable why) {
        AtomicInteger times = new AtomicInteger();
        return source -> {
            if (times.getAndIncrement() == 0) return sound(source);
            if (why instanceof IOException e) throw e;
            throw (Error) why;
        };
    }

    private void assertEachPage(List<String> told, String message) {
        assertThat(told).hasSize(12);
        for (int page = 1; page <= 12; page++)
            assertThat(told.get(page - 1)).startsWith("sheets.pdf, page " + page + ": " + message);
    }

    @Test
    void a_file_that_cannot_be_opened_once_more_is_no_matter_of_time() {
        assertEachPage(
                told(Limits.usual(), thenFails(new IOException("bad sector"))),
                "The page was not read: the file could not be opened once more (IOException)");
    }

    @Test
    void a_file_for_which_there_is_no_memory_is_told_so() {
        assertEachPage(
                told(Limits.usual(), thenFails(new OutOfMemoryError())),
                "The page was not read: the file asks for more memory than there is");
    }

    @Test
    void a_page_that_ignores_the_clock_is_given_up_and_the_others_are_read() {
        CountDownLatch over = new CountDownLatch(1);
        try {
            Limits limits = Limits.usual().with(Limit.PAGE_SECONDS, 2_000);
            assertThat(told(limits, source -> stuck(source, 5, over)))
                    .singleElement()
                    .asString()
                    .startsWith("sheets.pdf, page 5: The page holds more than can be read in 2 s.");
        } finally {
            over.countDown();
        }
    }

    /** A document whose page never comes, and does not mind being interrupted. */
    private static PDDocument stuck(asfound.recordset.Source source, int page, CountDownLatch over) throws IOException {
        return new PDDocument(sound(source).getDocument()) {
            @Override
            public PDPage getPage(int index) {
                while (index == page - 1 && over.getCount() > 0) Thread.onSpinWait();
                return super.getPage(index);
            }
        };
    }
}
