package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.sample.WhinfellAnnex;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a marked copy may ask for, and how one finds one's way in it. */
class RedlineLimitsTest {

    @TempDir
    Path folder;

    private static Limits limits(Duration time, long expanded) {
        return Limits.usual().with(Limit.FILE_SECONDS, time.toMillis()).with(Limit.EXPANDED_MB, expanded);
    }

    private void assertAlone(Limits limits, String why) throws IOException {
        Audit audit = WhinfellAnnex.in(folder);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(RedlineWriter.write(Redlines.of(audit).get(0), limits, out))
                .hasValueSatisfying(told -> assertThat(told).contains(why));
        assertThat(Written.text(out.toByteArray()))
                .contains(why)
                .contains("DO NOT USE FOR ISOLATION")
                .contains("Test for absence of voltage");
        try (PDDocument document = Written.open(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void a_drawing_whose_copying_does_not_end_gives_its_summary_alone() throws IOException {
        assertAlone(limits(Duration.ZERO, 1 << 20), "copying took longer than 0 s, the limit for one file");
    }

    @Test
    void a_drawing_whose_copy_holds_too_much_gives_its_summary_alone() throws IOException {
        assertAlone(limits(Duration.ofMinutes(5), 5_000), "the copy asks for more than 5000 bytes");
    }

    @Test
    void each_page_has_a_bookmark_that_says_how_much_is_marked_on_it() throws IOException {
        try (PDDocument document = Written.open(Written.redline(WhinfellAnnex.in(folder)))) {
            List<String> titles = new ArrayList<>();
            List<Integer> pages = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
                PDPage page = item.findDestinationPage(document);
                pages.add(document.getPages().indexOf(page) + 1);
            }
            assertThat(titles)
                    .containsExactly(
                            "Summary: what is to be changed",
                            "Page 1: 6 findings, not for isolation",
                            "Page 2: 4 findings, not for isolation",
                            "Page 3: 2 findings, not proven for isolation");
            assertThat(pages).containsExactly(1, 2, 3, 4);
        }
    }
}
